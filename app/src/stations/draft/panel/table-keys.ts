const STEPS: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-10, 0],
  PageDown: [10, 0],
};

const CELL = '[data-cell]';

/** The cells of a table's body, row by row; rows that hold words only are left out. */
const rowsOf = (cell: HTMLElement): readonly (readonly HTMLElement[])[] =>
  [...(cell.closest('tbody')?.rows ?? [])]
    .map((row) => [...row.querySelectorAll<HTMLElement>(CELL)])
    .filter((cells) => cells.length > 0);

/** The cell that a key leads to from another, as far as the table goes; null for keys that lead nowhere. */
export function cellBeside(cell: HTMLElement, key: string): HTMLElement | null {
  const rows = rowsOf(cell);
  const row = rows.findIndex((cells) => cells.includes(cell));
  const column = rows[row]?.indexOf(cell) ?? 0;
  if (key === 'Home') return rows[row]?.[0] ?? null;
  if (key === 'End') return rows[row]?.at(-1) ?? null;
  const step = STEPS[key];
  if (step === undefined) return null;
  const to = rows[within(row + step[0], rows.length)];
  return to?.[within(column + step[1], to.length)] ?? null;
}

const within = (index: number, count: number): number => Math.min(Math.max(index, 0), count - 1);

/** The next cell that holds a value, or the one before, in the order of reading; null at the end of the table. */
export function valueAfter(cell: HTMLElement, step: 1 | -1): HTMLElement | null {
  const values = rowsOf(cell)
    .flat()
    .filter((one) => one.dataset.cell === 'value');
  return values[values.indexOf(cell) + step] ?? null;
}

/** Whether a key is what a length begins with. */
export const isBeginning = (key: string): boolean => /^[\d.,\-−½¼¾⅛⅜⅝⅞]$/.test(key);
