import { SAME_COORDINATE } from '@seamwright/geometry';
import type { Assembly } from './assembly.ts';

/** One way to assemble a region, with all that the rest of the block needs to know of it to choose among them. */
export interface Variant {
  readonly assembly: Assembly;
  /** The numbers of its templates, ascending. */
  readonly templates: readonly number[];
  readonly matchPoints: number;
  /** Inches. */
  readonly joinLength: number;
}

/** Two ways with the same templates, or with some more: which is the better by what adds up over the parts of a block. */
const compareSums = (v: Variant, w: Variant): number =>
  v.assembly.foundations - w.assembly.foundations ||
  v.matchPoints - w.matchPoints ||
  (Math.abs(v.joinLength - w.joinLength) <= SAME_COORDINATE ? 0 : v.joinLength - w.joinLength);

/**
 * Fewest templates first, then by what adds up. Where all is equal, by the templates' numbers: copies of one region are
 * ranked alike, wherever they lie in the block.
 *
 * @param free templates that count for nothing
 */
export function compareVariants(v: Variant, w: Variant, free: ReadonlySet<number> = NO_TEMPLATES): number {
  const sums = countedIn(v, free) - countedIn(w, free) || compareSums(v, w);
  if (sums !== 0) return sums;
  const i = v.templates.findIndex((template, k) => template !== w.templates[k]);
  return i < 0 ? 0 : v.templates[i]! - (w.templates[i] ?? Number.POSITIVE_INFINITY);
}

export const NO_TEMPLATES: ReadonlySet<number> = new Set();

const countedIn = ({ templates }: Variant, free: ReadonlySet<number>): number =>
  free.size === 0 ? templates.length : templates.filter((template) => !free.has(template)).length;

/** Whether a way is as good as another one whatever the rest of the block is: no other templates, and no larger sums. */
const outdoes = (v: Variant, w: Variant): boolean =>
  v.templates.length <= w.templates.length && compareSums(v, w) <= 0 && isSubset(v.templates, w.templates);

function isSubset(some: readonly number[], all: readonly number[]): boolean {
  let k = 0;
  for (const item of some) {
    while (k < all.length && all[k]! < item) k += 1;
    if (all[k] !== item) return false;
  }
  return true;
}

/** The members of two ascending lists, each once. */
export function union(some: readonly number[], others: readonly number[]): readonly number[] {
  const all: number[] = [];
  let [i, k] = [0, 0];
  while (i < some.length || k < others.length) {
    const [a, b] = [some[i] ?? Number.POSITIVE_INFINITY, others[k] ?? Number.POSITIVE_INFINITY];
    all.push(Math.min(a, b));
    if (a <= b) i += 1;
    if (b <= a) k += 1;
  }
  return all;
}

/** The ways to assemble one region that may be part of the best of the whole block. */
export class Variants {
  private readonly byTemplates = new Map<string, Variant>();

  add(variant: Variant): void {
    const key = variant.templates.join(' ');
    const known = this.byTemplates.get(key);
    if (known === undefined || compareSums(variant, known) < 0) this.byTemplates.set(key, variant);
  }

  /**
   * Those that no other outdoes, best first.
   *
   * @param most so many at most; `all` is false where there are more
   * @param free templates that count for nothing
   */
  best(most: number, free: ReadonlySet<number>): { kept: readonly Variant[]; all: boolean } {
    const kept: Variant[] = [];
    for (const variant of [...this.byTemplates.values()].sort((v, w) => compareVariants(v, w, free))) {
      if (kept.some((other) => outdoes(other, variant))) continue;
      if (kept.length === most) return { kept, all: false };
      kept.push(variant);
    }
    return { kept, all: true };
  }
}
