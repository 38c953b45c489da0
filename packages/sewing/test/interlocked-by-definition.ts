import type { Arrangement } from '@seamwright/arrangement';

/**
 * The smallest interlocked sets of a small block by trying every set of patches: connected, and still connected whichever
 * line's edges are left out. Reads nothing but the edges of the arrangement.
 */
export function smallestInterlockedSets({ edges, patches }: Arrangement): number[][] {
  const inner = edges.filter(({ left, right }) => left >= 0 && right >= 0);
  const holds = (set: number, without: number) => {
    let reached = set & -set;
    for (let before = 0; before !== reached; ) {
      before = reached;
      for (const { left, right, line } of inner) {
        const both = (1 << left) | (1 << right);
        if (line !== without && (set & both) === both && (reached & both) !== 0) reached |= both;
      }
    }
    return reached === set;
  };
  const found: number[][] = [];
  for (let set = 1; set < 1 << patches.length; set += 1) {
    const members = patches.map(({ index }) => index).filter((p) => (set & (1 << p)) !== 0);
    if (members.length < 2 || members.length > (found[0]?.length ?? patches.length) || !holds(set, -1))
      continue;
    const lines = new Set(
      inner
        .filter(({ left, right }) => (set & (1 << left)) !== 0 && (set & (1 << right)) !== 0)
        .map((e) => e.line),
    );
    if (![...lines].every((line) => holds(set, line))) continue;
    if (members.length < (found[0]?.length ?? Number.POSITIVE_INFINITY)) found.length = 0;
    found.push(members);
  }
  return found;
}
