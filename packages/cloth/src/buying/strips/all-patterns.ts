import { type Cut, heightsOf, type Stock, type StripPattern, wayIn } from './stock.ts';

/**
 * Every pattern of a strip to which no piece that is needed could be added; no other is needed, as pieces too many may
 * be left out. Null when there are more than `most`.
 */
export function allPatterns(stock: Stock, most: number): StripPattern[] | null {
  const patterns: StripPattern[] = [];
  // Most branches end in a pattern; those that could take one more piece are dropped, and count as well.
  let looked = 0;
  for (const height of heightsOf(stock)) {
    const choices = stock.items.flatMap(({ count }, item) => {
      const way = wayIn(stock, item, height);
      return way === undefined ? [] : [{ item, way, count }];
    });
    choices.sort((a, b) => b.way.length - a.way.length);
    const cuts: Cut[] = [];
    const grow = (index: number, room: number): boolean => {
      const choice = choices[index];
      if (choice === undefined) {
        looked += 1;
        if (looked > most) return false;
        const taken = (item: number) => cuts.find((cut) => cut.item === item)?.count ?? 0;
        const isFull = choices.every(({ item, way, count }) => way.length > room || taken(item) === count);
        if (isFull && cuts.length > 0) patterns.push({ height, cuts: [...cuts] });
        return true;
      }
      const { item, way, count } = choice;
      for (let some = Math.min(count, Math.floor(room / way.length)); some >= 0; some -= 1) {
        if (some > 0) cuts.push({ item, way, count: some });
        const goesOn = grow(index + 1, room - some * way.length);
        if (some > 0) cuts.pop();
        if (!goesOn) return false;
      }
      return true;
    };
    if (!grow(0, stock.capacity)) return null;
  }
  return patterns;
}
