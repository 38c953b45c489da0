import type { PackingEffort } from '../job.ts';
import { grownRoom } from './least-sheets.ts';
import { type PackOptions, packSheets } from './pack.ts';
import type { Packable, Placement } from './placement.ts';

/** Something that is to be printed, and how many are wanted. */
export interface Wish<T extends Packable> {
  readonly item: T;
  readonly count: number;
}

/** One of several prints of an item that stand on the sheets of a run. */
export interface Copy<T extends Packable> extends Packable<T['ways'][number]> {
  readonly of: T;
  /** From 0. */
  readonly number: number;
}

/** A sheet, and how often it is printed. */
export interface RunSheet<T extends Packable> {
  readonly places: readonly Placement<Copy<T>>[];
  readonly times: number;
}

export interface RunOptions extends PackOptions {
  /** Whether several copies of one item may stand on the sheets. */
  readonly fill: boolean;
}

/** Fuller sheets are never found in a moment, measured on shapes of all kinds (`npm run bench -- pages`): not worth a try. */
const FULLEST = 0.93;

/** Copies on the sheets of one run: beyond that a run is as fine as the numbers wanted ask for. */
const MOST_COPIES = 60;

/**
 * Puts items on as few sheets as it finds ({@link packSheets}), each of which is printed as often as the item on it of which most
 * are wanted. Where they may be filled, so many copies of each item are put on them that fewest are printed: of 48 small ones,
 * six to a sheet that is printed eight times.
 *
 * A run of sheets that is printed t times holds ⌈count ÷ t⌉ copies of each item. Of all t that could save paper, from the
 * largest (each item once) downwards, the one with the least paper counts; the largest of those, so that the file is short. A
 * sheet without which enough are printed is printed less often than t. The same wishes give the same sheets.
 *
 * Throws a RangeError when an item does not fit on an empty sheet.
 */
export function packRuns<T extends Packable>(
  wishes: readonly Wish<T>[],
  options: RunOptions,
): readonly RunSheet<T>[] {
  const room = grownRoom(options.regions, options.gap / 2);
  const largest = Math.max(0, ...wishes.map(({ count }) => count));
  const packed = (times: number, effort: PackingEffort) =>
    runOf(packSheets(copiesFor(wishes, times), { ...options, effort }), wishes, times);
  const { fill, effort = 'quick' } = options;
  let best = packed(largest, fill ? 'quick' : effort);
  if (!fill) return best;
  let [chosen, tried] = [largest, largest];
  for (let most = 2; most <= largest; most++) {
    const times = Math.ceil(largest / most);
    if (times === tried) continue;
    tried = times;
    const copies = sumOf(wishes, ({ count }) => Math.ceil(count / times));
    if (copies > MOST_COPIES) break;
    const grown = sumOf(wishes, ({ item, count }) => Math.ceil(count / times) * item.grown);
    const pages = Math.ceil(grown / (FULLEST * room));
    if (times * pages >= paperOf(best)) continue;
    const sheets = packed(times, 'quick');
    if (paperOf(sheets) < paperOf(best)) [best, chosen] = [sheets, times];
  }
  if (effort === 'quick') return best;
  const longer = packed(chosen, effort);
  return paperOf(longer) < paperOf(best) ? longer : best;
}

/** Sheets of paper. */
const paperOf = (sheets: readonly { readonly times: number }[]): number =>
  sumOf(sheets, ({ times }) => times);

const copiesFor = <T extends Packable>(wishes: readonly Wish<T>[], times: number): readonly Copy<T>[] =>
  wishes.flatMap(({ item, count }) =>
    Array.from({ length: Math.ceil(count / times) }, (_, number) => ({
      of: item,
      number,
      grown: item.grown,
      ways: item.ways,
    })),
  );

/** Each sheet as often as it takes, the emptiest first to be printed less often; at most `times`. */
function runOf<T extends Packable>(
  packed: readonly (readonly Placement<Copy<T>>[])[],
  wishes: readonly Wish<T>[],
  most: number,
): readonly RunSheet<T>[] {
  const held = packed.map((places) => {
    const counts = new Map<T, number>();
    for (const { item } of places) counts.set(item.of, (counts.get(item.of) ?? 0) + 1);
    return counts;
  });
  const spare = new Map(wishes.map(({ item, count }) => [item, -count]));
  for (const counts of held)
    for (const [item, number] of counts) spare.set(item, spare.get(item)! + most * number);
  const times = packed.map(() => most);
  const emptiest = packed.map((_, i) => i).sort((p, q) => packed[p]!.length - packed[q]!.length || p - q);
  for (const i of emptiest) {
    const without = Math.min(
      most,
      ...[...held[i]!].map(([item, number]) => Math.floor(spare.get(item)! / number)),
    );
    times[i] = most - without;
    for (const [item, number] of held[i]!) spare.set(item, spare.get(item)! - without * number);
  }
  return packed.flatMap((places, i) => (times[i] === 0 ? [] : [{ places, times: times[i]! }]));
}

const sumOf = <T>(list: readonly T[], of: (one: T) => number): number =>
  list.reduce((sum, one) => sum + of(one), 0);
