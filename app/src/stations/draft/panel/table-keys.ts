const STEPS: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-10, 0],
  PageDown: [10, 0],
};

const cellsOf = (row: HTMLElement): readonly HTMLElement[] => [
  ...row.querySelectorAll<HTMLElement>('[data-cell]'),
];

/** The row so many rows farther, as far as the table goes. */
function rowFrom(row: HTMLElement, steps: number): HTMLElement {
  let reached = row;
  for (let left = Math.abs(steps); left > 0; left--) {
    const next = steps < 0 ? reached.previousElementSibling : reached.nextElementSibling;
    if (next === null) break;
    reached = next as HTMLElement;
  }
  return reached;
}

/** The cell that a key leads to from another, as far as the table goes; null for keys that lead nowhere. */
export function cellBeside(cell: HTMLElement, key: string): HTMLElement | null {
  const row = cell.closest('li');
  if (row === null) return null;
  const cells = cellsOf(row);
  if (key === 'Home') return cells[0] ?? null;
  if (key === 'End') return cells.at(-1) ?? null;
  const step = STEPS[key];
  if (step === undefined) return null;
  const [rows, columns] = step;
  if (rows === 0) return cells[within(cells.indexOf(cell) + columns, cells.length)] ?? null;
  return cellsOf(rowFrom(row, rows))[cells.indexOf(cell)] ?? null;
}

const within = (index: number, count: number): number => Math.min(Math.max(index, 0), count - 1);

/** The next cell that holds a value, or the one before, in the order of reading; null at the end of the table. */
export function valueAfter(cell: HTMLElement, step: 1 | -1): HTMLElement | null {
  const row = cell.closest('li');
  if (row === null) return null;
  const values = (one: HTMLElement) => cellsOf(one).filter(({ dataset }) => dataset.cell === 'value');
  const inRow = values(row)[values(row).indexOf(cell) + step];
  if (inRow !== undefined) return inRow;
  const other = rowFrom(row, step);
  return other === row ? null : (values(other).at(step < 0 ? -1 : 0) ?? null);
}

/** Whether a key is what a length begins with. */
export const isBeginning = (key: string): boolean => /^[\d.,\-−½¼¾⅛⅜⅝⅞]$/.test(key);
