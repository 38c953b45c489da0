import { type Cut, gathered, lengthOf, type Stock, type Strips, type Way } from './stock.ts';

/** Which way a piece lies, by what is least. */
type Preference = (way: Way, capacity: number) => number;

const PREFERENCES: readonly Preference[] = [
  ({ length, height }, capacity) => height / Math.floor(capacity / length),
  ({ height }) => height,
  ({ length }) => length,
];

/**
 * First fit, decreasing: pieces by falling height, then length, each into the first strip that has room. Three times,
 * with pieces turned so that strips of that piece alone would take the least fabric; lying; standing. The least counts.
 */
export function firstFit(stock: Stock): Strips[] {
  const plans = PREFERENCES.map((preference) => fitted(stock, preference));
  return plans.reduce((best, plan) => (lengthOf(plan) < lengthOf(best) ? plan : best));
}

interface Open {
  readonly height: number;
  room: number;
  readonly cuts: Cut[];
}

function fitted({ capacity, trim, items }: Stock, preference: Preference): Strips[] {
  const cuts = items.map(({ count, ways }, item) => {
    const rank = (way: Way) => preference(way, capacity);
    const way = ways.reduce((best, other) => (rank(other) < rank(best) ? other : best));
    return { item, count, way };
  });
  cuts.sort((a, b) => b.way.height - a.way.height || b.way.length - a.way.length || a.item - b.item);
  const open: Open[] = [];
  for (const { item, count, way } of cuts) {
    let left = count;
    const take = (strip: Open) => {
      const some = Math.min(left, Math.floor(strip.room / way.length));
      if (some === 0) return;
      strip.cuts.push({ item, way, count: some });
      strip.room -= some * way.length;
      left -= some;
    };
    for (const strip of open) {
      if (left === 0) break;
      if (trim || strip.height === way.height) take(strip);
    }
    while (left > 0) {
      const strip: Open = { height: way.height, room: capacity, cuts: [] };
      open.push(strip);
      take(strip);
    }
  }
  return gathered(open.map(({ height, cuts: taken }) => ({ pattern: { height, cuts: taken }, count: 1 })));
}
