import { gathered, type Stock, type StripPattern, type Strips } from './stock.ts';

/**
 * The same strips without the pieces that nobody needs, taken from the last ones; a strip of which nothing is left goes,
 * and one whose highest piece went is cut as high as the highest that stayed.
 */
export function withoutSurplus(strips: readonly Strips[], { items }: Stock): Strips[] {
  const surplus = items.map(({ count }) => -count);
  for (const { pattern, count } of strips)
    for (const cut of pattern.cuts) surplus[cut.item]! += cut.count * count;
  const kept: Strips[] = [];
  for (const { pattern, count } of [...strips].reverse()) {
    let whole = count;
    while (whole > 0 && pattern.cuts.some(({ item }) => surplus[item]! > 0)) {
      whole -= 1;
      const less = lessened(pattern, surplus);
      if (less !== null) kept.push({ pattern: less, count: 1 });
    }
    if (whole > 0) kept.push({ pattern, count: whole });
  }
  return gathered(kept.reverse());
}

/** One strip, with as much of the surplus left out as there is; null when nothing stays. */
function lessened({ cuts }: StripPattern, surplus: number[]): StripPattern | null {
  const kept = cuts.flatMap((cut) => {
    const less = Math.min(cut.count, Math.max(0, surplus[cut.item]!));
    surplus[cut.item]! -= less;
    return less === cut.count ? [] : [{ ...cut, count: cut.count - less }];
  });
  return kept.length === 0 ? null : { height: Math.max(...kept.map(({ way }) => way.height)), cuts: kept };
}
