import type { Touching } from './contact.ts';
import { maskOf, partsOf, type Region } from './region.ts';

/** A straight cut: a region divided into two connected parts that touch on one line only. */
export interface Cut {
  readonly line: number;
  readonly parts: readonly [Region, Region];
}

/**
 * Above so many pieces that hang together in a ring along one line, not all ways of dividing them are listed. Blocks
 * drawn by people have two or three pieces; only a chain of islands could have more.
 */
const RING_OF_PIECES = 12;

/**
 * All straight cuts of a connected region, in the order of their lines.
 *
 * Along a line, the region falls into pieces; those that touch across it form a graph. Each division of that graph
 * into two connected parts is a cut. In a region without holes the graph is a tree, and each of its links is one.
 *
 * @returns the cuts, and whether they are all there are
 */
export function straightCuts(touching: Touching, region: Region): { cuts: Cut[]; complete: boolean } {
  const mask = maskOf(touching, region);
  const lines = new Set<number>();
  for (const p of region) {
    for (const { line, neighbour } of touching.contacts[p]!) if (mask[neighbour] === 1) lines.add(line);
  }
  const cuts: Cut[] = [];
  let complete = true;
  for (const line of [...lines].sort((k, l) => k - l)) {
    const pieces = partsOf(touching, region, mask, line);
    if (pieces.length < 2) continue;
    if (pieces.length === 2) {
      cuts.push({ line, parts: [pieces[0]!, pieces[1]!] });
      continue;
    }
    const links = linksAcross(touching, pieces, mask, line);
    const listed = divisions(pieces.length, links);
    complete &&= listed.complete;
    for (const side of listed.sides) {
      const of = (inside: boolean) =>
        pieces.flatMap((piece, i) => (side.has(i) === inside ? piece : [])).sort((p, q) => p - q);
      cuts.push({ line, parts: [of(true), of(false)] });
    }
  }
  return { cuts, complete };
}

/** Pairs of pieces that touch across the line. */
function linksAcross(
  touching: Touching,
  pieces: readonly Region[],
  mask: Uint8Array,
  line: number,
): readonly (readonly [number, number])[] {
  const pieceOf = new Map(pieces.flatMap((piece, i) => piece.map((p) => [p, i] as const)));
  const links = new Map<number, readonly [number, number]>();
  for (const [p, i] of pieceOf) {
    for (const contact of touching.contacts[p]!) {
      if (contact.line !== line || mask[contact.neighbour] === 0) continue;
      const j = pieceOf.get(contact.neighbour)!;
      if (i < j) links.set(i * pieces.length + j, [i, j]);
    }
  }
  return [...links.values()];
}

/** Ways to divide a connected graph into two connected parts; each given by one side, the one without node 0. */
function divisions(
  count: number,
  links: readonly (readonly [number, number])[],
): { sides: Set<number>[]; complete: boolean } {
  if (links.length === count - 1) {
    return { sides: links.map((link) => reached(link, links)), complete: true };
  }
  const sides: Set<number>[] = [];
  if (count > RING_OF_PIECES) return { sides, complete: false };
  for (let bits = 1; bits < 2 ** (count - 1); bits += 1) {
    const side = new Set(
      Array.from({ length: count - 1 }, (_, i) => i + 1).filter((i) => bits & (1 << (i - 1))),
    );
    const rest = new Set(Array.from({ length: count }, (_, i) => i).filter((i) => !side.has(i)));
    if (hangsTogether(side, links) && hangsTogether(rest, links)) sides.push(side);
  }
  return { sides, complete: true };
}

/** In a tree, the nodes that are cut off from node 0 without `link`. */
function reached(
  link: readonly [number, number],
  links: readonly (readonly [number, number])[],
): Set<number> {
  const others = links.filter((l) => l !== link);
  const fromZero = spread(0, others);
  const nodes = new Set(links.flat());
  return new Set([...nodes].filter((node) => !fromZero.has(node)));
}

const hangsTogether = (
  nodes: ReadonlySet<number>,
  links: readonly (readonly [number, number])[],
): boolean => {
  const inner = links.filter(([i, j]) => nodes.has(i) && nodes.has(j));
  const [start] = nodes;
  return start !== undefined && spread(start, inner).size === nodes.size;
};

function spread(start: number, links: readonly (readonly [number, number])[]): Set<number> {
  const seen = new Set([start]);
  const open = [start];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    for (const [i, j] of links) {
      const other = i === node ? j : j === node ? i : undefined;
      if (other === undefined || seen.has(other)) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return seen;
}
