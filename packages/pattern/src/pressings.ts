import type { PatchRecord } from '@seamwright/arrangement';

/**
 * How the maker presses one join, where not as usual: known by two patches that meet on its seam, by the ids of their records,
 * so that it stays while letters change. A patch may be gone; then nothing is pressed by it.
 */
export interface PressingRecord {
  readonly patches: readonly [string, string];
  /** Where both allowances lie: under the first patch's side, under the second's, or one under each. */
  readonly under: 'first' | 'second' | 'open';
}

/** A join by the pairs of patches that meet on its seam: first those of its first unit. Indices into the records. */
export type PairsOfJoin = readonly (readonly [number, number])[];

/** What the maker wants of that join, seen from its first unit; undefined where nothing was said. */
export function pressingOf(
  pressings: readonly PressingRecord[],
  pairs: PairsOfJoin,
  records: readonly PatchRecord[],
): PressingRecord['under'] | undefined {
  for (const { patches, under } of pressings) {
    const side = sideOf(patches, pairs, records);
    if (side !== null) return side === 'as said' ? under : turned(under);
  }
  return undefined;
}

/** The pressings with this one in place of what was said of the join. */
export function withPressing(
  pressings: readonly PressingRecord[],
  pairs: PairsOfJoin,
  records: readonly PatchRecord[],
  under: PressingRecord['under'],
): readonly PressingRecord[] {
  const others = pressings.filter(({ patches }) => sideOf(patches, pairs, records) === null);
  const [first, second] = pairs[0]!;
  return [...others, { patches: [records[first]!.id, records[second]!.id], under }];
}

/** Whether two patches meet on the join, in this order or the other way round; null where they do not. */
function sideOf(
  [a, b]: PressingRecord['patches'],
  pairs: PairsOfJoin,
  records: readonly PatchRecord[],
): 'as said' | 'the other way' | null {
  for (const [first, second] of pairs) {
    const [p, q] = [records[first]?.id, records[second]?.id];
    if (p === a && q === b) return 'as said';
    if (p === b && q === a) return 'the other way';
  }
  return null;
}

const turned = (under: PressingRecord['under']): PressingRecord['under'] =>
  under === 'open' ? under : under === 'first' ? 'second' : 'first';
