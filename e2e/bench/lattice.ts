/** Inches between the lattice's lines. */
const STEP = 0.5;

interface LatticePoint {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly on?: readonly string[];
}

/** A pattern file with one block, `columns` × `rows` patches between straight lines from edge to edge. */
export function latticeFile(columns: number, rows: number): string {
  const [width, height] = [columns * STEP, rows * STEP];
  const points: Record<string, LatticePoint> = {};
  const put = (id: string, x: number, y: number, edge?: string) => {
    points[id] = { id, x, y, ...(edge !== undefined && { on: [`edge:${edge}`] }) };
    return id;
  };
  const outline = [put('nw', 0, 0), put('ne', width, 0), put('se', width, height), put('sw', 0, height)];
  const upright = Array.from({ length: columns - 1 }, (_, i) => {
    const x = (i + 1) * STEP;
    return { id: `up${i}`, from: put(`upper${i}`, x, 0, 'nw'), to: put(`lower${i}`, x, height, 'se') };
  });
  const level = Array.from({ length: rows - 1 }, (_, i) => {
    const y = (i + 1) * STEP;
    return { id: `level${i}`, from: put(`left${i}`, 0, y, 'sw'), to: put(`right${i}`, width, y, 'ne') };
  });
  const drawing = { points, outline, splits: [...upright, ...level] };
  return JSON.stringify({
    format: 'seamwright-pattern/1',
    title: 'Lattice',
    unit: 'in',
    blocks: [{ id: 'lattice', name: 'Lattice', drawing, grid: 0.25, patches: [] }],
  });
}

/** Where the line next to the middle ends on the upper edge, inches. */
export const middleEnd = (columns: number): readonly [number, number] => [Math.floor(columns / 2) * STEP, 0];

/** Where the line next to the middle ends on the left edge, inches. */
export const levelEnd = (rows: number): readonly [number, number] => [0, Math.floor(rows / 2) * STEP];

/** A place on an upright line, half-way between two level ones, inches. */
export const besideLines = (columns: number, rows: number): readonly [number, number] => [
  (Math.floor(columns / 2) + 1) * STEP,
  (Math.floor(rows / 2) + 0.5) * STEP,
];
