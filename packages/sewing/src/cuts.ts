import type { Touching } from './contact.ts';
import { maskOf, type Region } from './region.ts';
import { mayCut, type Will } from './will.ts';

/** A stretch of one line right across a region, from its boundary to its boundary. */
export interface Run {
  readonly line: number;
  /** The edges of the stretch, in order. */
  readonly edges: readonly number[];
  /** The vertices between its edges: inside the region, all of them. */
  readonly inner: readonly number[];
}

/** A straight cut: a region divided into two connected parts that touch along one run. */
export interface Cut {
  readonly run: Run;
  readonly parts: readonly [Region, Region];
}

/**
 * All runs of a connected region without holes, in the order of their lines: each is a straight cut, and there are no
 * others. (Two connected parts that touched along two separate stretches would enclose something that is in neither;
 * and a stretch that ends inside the region leaves a way round its end.)
 */
export function runsAcross(touching: Touching, region: Region, mask: Uint8Array): Run[] {
  const ranks: number[] = [];
  for (const p of region) {
    for (const { edge, neighbour } of touching.contacts[p]!) {
      if (p < neighbour && mask[neighbour] === 1) ranks.push(touching.rankOf[edge]!);
    }
  }
  ranks.sort((r, s) => r - s);
  const onBoundary = (vertex: number) => touching.around[vertex]!.some((p) => p < 0 || mask[p] === 0);

  const runs: Run[] = [];
  let edges: number[] = [];
  let inner: number[] = [];
  let before = -1;
  for (const rank of ranks) {
    const { edge, line, start, end } = touching.alongLines[rank]!;
    const previous = touching.alongLines[before];
    const goesOn =
      edges.length > 0 && before === rank - 1 && previous?.line === line && previous.end === start;
    if (goesOn) {
      inner.push(start);
    } else {
      edges = [];
      inner = [];
    }
    before = rank;
    if (edges.length === 0 && !onBoundary(start)) continue;
    edges.push(edge);
    if (!onBoundary(end)) continue;
    runs.push({ line, edges, inner });
    edges = [];
    inner = [];
  }
  return runs;
}

/** The two parts that a run leaves of a region; null when it leaves one (in a region with a hole). */
function partsBeside(
  touching: Touching,
  region: Region,
  mask: Uint8Array,
  { edges }: Run,
): readonly [Region, Region] | null {
  const cut = new Set(edges);
  const [first] = edges;
  const beside = region.filter((p) => touching.contacts[p]!.some(({ edge }) => edge === first));
  const inPart = new Uint8Array(touching.count);
  const open = [beside[0]!];
  inPart[beside[0]!] = 1;
  for (let patch = open.pop(); patch !== undefined; patch = open.pop()) {
    for (const { edge, neighbour } of touching.contacts[patch]!) {
      if (mask[neighbour] === 0 || inPart[neighbour] === 1 || cut.has(edge)) continue;
      inPart[neighbour] = 1;
      open.push(neighbour);
    }
  }
  if (inPart[beside[1]!] === 1) return null;
  return [region.filter((p) => inPart[p] === 1), region.filter((p) => inPart[p] === 0)];
}

/** All straight cuts of a connected region, in the order of their lines. */
export function straightCuts(touching: Touching, region: Region): Cut[] {
  const mask = maskOf(touching, region);
  return runsAcross(touching, region, mask).flatMap((run) => {
    const parts = partsBeside(touching, region, mask, run);
    return parts === null ? [] : [{ run, parts }];
  });
}

/**
 * One straight cut of a region, or null when there is none: of the runs that pass the most crossings, the one with the
 * fewest edges to sew. Looks at one cut only, for regions too large to compare all.
 */
export function someCut(
  touching: Touching,
  region: Region,
  isCrossing: (vertex: number) => boolean,
  will: Will,
): Cut | null {
  const mask = maskOf(touching, region);
  const rated = runsAcross(touching, region, mask).map((run) => ({
    run,
    crossings: run.inner.filter(isCrossing).length,
  }));
  rated.sort((r, s) => s.crossings - r.crossings || r.run.edges.length - s.run.edges.length);
  for (const { run } of rated) {
    const parts = partsBeside(touching, region, mask, run);
    if (parts !== null && mayCut(will, parts[0])) return { run, parts };
  }
  return null;
}
