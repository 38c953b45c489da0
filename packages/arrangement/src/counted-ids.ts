/**
 * New ids are not counted on from numbers above this: a pattern file takes no more than twelve digits in a row, and one from
 * elsewhere may use them all.
 */
const LARGEST_COUNTED = 999_999_999;

/** The number that an id ends in, as far as it is counted on from; 0 where there is none. */
export function numberOfId(id: string): number {
  const number = Number(/\d+$/.exec(id)?.[0] ?? 0);
  return number <= LARGEST_COUNTED ? number : 0;
}

/**
 * Gives out ids, `prefix` and a number, that are none of `taken` and count on from the highest number in it, the same ones
 * for the same ids. So an id stays unused even when those below it are gone.
 */
export function idsAfter(taken: readonly string[]): (prefix: string) => string {
  const known = new Set(taken);
  let last = taken.reduce((most, id) => Math.max(most, numberOfId(id)), 0);
  return (prefix) => {
    do last += 1;
    while (known.has(`${prefix}${last}`));
    return `${prefix}${last}`;
  };
}
