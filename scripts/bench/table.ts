type Cell = string | number;

/** Prints a table whose rows come one by one, each as soon as it is measured. */
export class Table {
  private readonly widths: readonly number[];

  /**
   * @param columns their heads; the first column holds names
   * @param longest characters of the longest name
   */
  constructor(
    title: string,
    private readonly columns: readonly string[],
    longest = 17,
  ) {
    this.widths = columns.map((column, i) => Math.max(column.length, i === 0 ? longest : 9));
    console.log(`\n${title}\n`);
    this.print(columns);
    this.print(this.widths.map((width) => '-'.repeat(width)));
  }

  row(...cells: readonly Cell[]): void {
    if (cells.length !== this.columns.length)
      throw new Error('a row has as many cells as the table has columns');
    this.print(cells.map(String));
  }

  private print(cells: readonly string[]): void {
    const padded = cells.map((cell, i) =>
      i === 0 ? cell.padEnd(this.widths[i]!) : cell.padStart(this.widths[i]!),
    );
    console.log(padded.join('  ').trimEnd());
  }
}

/** Milliseconds with three figures. */
export const ms = (value: number): string =>
  value < 0.1
    ? value.toFixed(4)
    : value < 10
      ? value.toFixed(2)
      : value < 100
        ? value.toFixed(1)
        : value.toFixed(0);

/** A ratio; nothing where there is none. */
export const factor = (value: number): string => (Number.isNaN(value) ? '' : value.toFixed(2));
