import type { Highs, Model } from 'highs';
import type { Stock, StripPattern } from './stock.ts';

/**
 * The covering program over a set of patterns, given to HiGHS: how often each is cut, so that every piece is had and the
 * strips' heights sum up to the least. Columns are patterns, rows are items.
 */
export class Master {
  readonly patterns: StripPattern[] = [];
  private readonly model: Model;
  private needed: readonly number[];

  /** @param step grid steps in the unit of the objective, so that HiGHS sees small numbers */
  constructor(
    private readonly highs: Highs,
    stock: Stock,
    private readonly step: number,
  ) {
    this.needed = stock.items.map(({ count }) => count);
    this.model = highs.createModel();
    this.model.options.set({ output_flag: false, random_seed: 0 });
    for (const { count } of stock.items)
      this.model.addRow(count, highs.infinity, { indices: [], values: [] });
  }

  add(pattern: StripPattern): void {
    const made = new Map<number, number>();
    for (const { item, count } of pattern.cuts) made.set(item, (made.get(item) ?? 0) + count);
    this.patterns.push(pattern);
    this.model.addCol(pattern.height / this.step, 0, this.highs.infinity, {
      indices: [...made.keys()],
      values: [...made.values()],
    });
  }

  /** Asks for other counts of the items from now on. */
  need(counts: readonly number[]): void {
    this.needed = counts;
    counts.forEach((count, row) => {
      this.model.changeRowBounds(row, count, this.highs.infinity);
    });
  }

  /** The same program with parts of strips allowed; null when HiGHS does not finish. */
  relaxed(): { counts: readonly number[]; worth: readonly number[] } | null {
    this.model.run();
    if (this.model.getModelStatus() !== this.highs.constants.modelStatus.optimal) return null;
    const { colValue, rowDual } = this.model.getSolution();
    return { counts: [...colValue], worth: [...rowDual].map((dual) => Math.max(0, dual)) };
  }

  /**
   * Whole strips. HiGHS stops at a count of nodes, so that the answer is the same on every computer; the time is there
   * for the case that single nodes take long.
   *
   * @returns counts that cover every item, and the bound that HiGHS proved for these patterns, in grid steps; null when
   *   it found no counts
   */
  whole({ nodes, seconds }: Effort): { counts: readonly number[]; bound: number } | null {
    const { model, highs } = this;
    model.options.set({ mip_max_nodes: nodes, time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: WITHIN_ONE });
    this.patterns.forEach((_, column) => {
      model.changeColIntegrality(column, highs.constants.variableType.integer);
    });
    model.clearSolver();
    model.run();
    const bound = Number(model.info.get('mip_dual_bound')) * this.step;
    // Whole numbers come back as 14.999999.
    const counts = [...model.getSolution().colValue].map(Math.round);
    return this.covers(counts) ? { counts, bound } : null;
  }

  private covers(counts: readonly number[]): boolean {
    const had = this.needed.map(() => 0);
    this.patterns.forEach(({ cuts }, column) => {
      for (const { item, count } of cuts) had[item]! += count * (counts[column] ?? 0);
    });
    return this.needed.every((count, item) => had[item]! >= count);
  }

  dispose(): void {
    this.model.dispose();
  }
}

/** How long HiGHS may look. */
export interface Effort {
  readonly nodes: number;
  readonly seconds: number;
}

/** The objective is a whole number: a gap below 1 is none. */
const WITHIN_ONE = 0.99;
