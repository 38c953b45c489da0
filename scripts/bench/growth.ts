import { factor, Table } from './table.ts';

/** Milliseconds. Shorter times say more of the clock than of what is measured. */
const MEASURABLE = 0.01;

interface Measured {
  readonly size: number;
  readonly ms: number;
}

/** By what a time grows for each doubling of the size. */
const growthBetween = (small: Measured, large: Measured): number =>
  (large.ms / small.ms) ** (1 / Math.log2(large.size / small.size));

/** The times of one computation on one family of drawings, from small to large. */
class Series {
  private readonly measured: Measured[] = [];

  constructor(
    readonly what: string,
    readonly drawing: string,
  ) {}

  /** @returns the growth since the size before; NaN where that took no time worth measuring */
  add(size: number, ms: number): number {
    const before = this.measured.at(-1);
    this.measured.push({ size, ms });
    return before === undefined || before.ms < MEASURABLE ? Number.NaN : growthBetween(before, { size, ms });
  }

  /** Where there are two times that are worth measuring: the growth from the first of these to the last, and the worst step. */
  summary(): { from: Measured; to: Measured; mean: number; worst: number } | null {
    const worth = this.measured.slice(this.measured.findIndex(({ ms }) => ms >= MEASURABLE));
    const [from, to] = [worth[0], worth.at(-1)];
    if (from === undefined || to === undefined || worth.length < 2 || from.ms < MEASURABLE) return null;
    const steps = worth.slice(1).map((large, i) => growthBetween(worth[i]!, large));
    return { from, to, mean: growthBetween(from, to), worst: Math.max(...steps) };
  }
}

/** All series of a run, for the table at its end. */
export class Growths {
  private readonly series: Series[] = [];

  begin(what: string, drawing: string): Series {
    const series = new Series(what, drawing);
    this.series.push(series);
    return series;
  }

  print(): void {
    const table = new Table(
      `By what times grow for each doubling of the patches, from the first of ${MEASURABLE} ms or more to the last`,
      ['drawing', 'what', 'from', 'to', 'growth', 'worst step'],
    );
    for (const series of this.series) {
      const summary = series.summary();
      if (summary === null) continue;
      const { from, to, mean, worst } = summary;
      table.row(series.drawing, series.what, from.size, to.size, factor(mean), factor(worst));
    }
  }
}
