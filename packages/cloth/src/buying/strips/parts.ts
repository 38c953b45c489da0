import type { Stock } from './stock.ts';

/**
 * The items in groups that share no strip, so that each group is a problem of its own: where nothing is trimmed, those
 * that can lie in strips of one height belong together.
 *
 * @returns indices of items
 */
export function independentParts({ trim, items }: Stock): number[][] {
  if (items.length === 0) return [];
  if (trim) return [items.map((_, item) => item)];
  const leader = new Map<number, number>();
  const find = (height: number): number => {
    const up = leader.get(height) ?? height;
    return up === height ? height : find(up);
  };
  for (const { ways } of items) {
    for (const { height } of ways) leader.set(find(height), find(ways[0]!.height));
  }
  const parts = new Map<number, number[]>();
  items.forEach(({ ways }, item) => {
    const key = find(ways[0]!.height);
    parts.set(key, [...(parts.get(key) ?? []), item]);
  });
  return [...parts.values()];
}
