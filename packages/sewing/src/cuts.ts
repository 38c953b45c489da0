import type { Touching } from './contact.ts';
import { isInside } from './corners.ts';
import { type Region, ranksWithin, withMask } from './region.ts';
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
function runsAcross(touching: Touching, region: Region): Run[] {
  return withMask(touching, region, (mask) => runsOf(touching, region, mask));
}

function runsOf(touching: Touching, region: Region, mask: Uint8Array): Run[] {
  const onBoundary = (vertex: number) => !isInside(touching, mask, vertex);

  const runs: Run[] = [];
  let edges: number[] = [];
  let passed: number[] = [];
  let before = -1;
  for (const rank of ranksWithin(touching, region, mask)) {
    const [start, end] = [touching.start[rank]!, touching.end[rank]!];
    if (edges.length > 0 && before === rank - 1 && touching.goesOn[before] === 1) {
      passed.push(start);
    } else {
      edges = [];
      passed = [];
    }
    before = rank;
    if (edges.length === 0 && !onBoundary(start)) continue;
    edges.push(touching.edge[rank]!);
    if (!onBoundary(end)) continue;
    runs.push({ line: touching.line[rank]!, edges, inner: passed });
    edges = [];
    passed = [];
  }
  return runs;
}

/** The two parts that a run leaves of a region; null when it leaves one (in a region with a hole). */
function partsBeside(touching: Touching, region: Region, { edges }: Run): readonly [Region, Region] | null {
  const cut = new Set(edges);
  const { first, owner, neighbour, rank, edge, rankOf, contactAt } = touching;
  const contact = contactAt[rankOf[edges[0]!]!]!;
  const [start, other] = [owner[contact]!, neighbour[contact]!];
  return withMask(touching, region, (left) => {
    const open = [start];
    left[start] = 0;
    for (let patch = open.pop(); patch !== undefined; patch = open.pop()) {
      for (let c = first[patch]!; c < first[patch + 1]!; c += 1) {
        const q = neighbour[c]!;
        if (left[q] === 0 || cut.has(edge[rank[c]!]!)) continue;
        left[q] = 0;
        open.push(q);
      }
    }
    if (left[other] === 0) return null;
    return [region.filter((p) => left[p] === 0), region.filter((p) => left[p] === 1)];
  });
}

/** Of runs that are equally good, so many are tried. */
const HANDFUL = 8;

/**
 * One straight cut of a region, or null when there is none: of the runs that pass the most crossings, one with the
 * fewest edges to sew, and of a handful of those the one that halves the region best. Looks at no more cuts than that,
 * for regions too large to compare all.
 */
export function someCut(
  touching: Touching,
  region: Region,
  isCrossing: (vertex: number) => boolean,
  will: Will,
): Cut | null {
  const rated = runsAcross(touching, region).map((run) => ({
    run,
    crossings: run.inner.filter(isCrossing).length,
  }));
  rated.sort((r, s) => s.crossings - r.crossings || r.run.edges.length - s.run.edges.length);
  const [best] = rated;
  const equal = rated.filter(
    ({ run, crossings }) => crossings === best?.crossings && run.edges.length === best.run.edges.length,
  ).length;
  const allowed = ({ run }: { run: Run }): Cut[] => {
    const parts = partsBeside(touching, region, run);
    return parts !== null && mayCut(will, parts[0]) ? [{ run, parts }] : [];
  };
  const step = Math.max(1, Math.floor(equal / HANDFUL));
  const tried = rated.slice(0, equal).filter((_, i) => i % step === 0);
  const halving = tried.flatMap(allowed);
  if (halving.length > 0) return halving.reduce((a, b) => (smallerPart(b) > smallerPart(a) ? b : a));
  for (const candidate of rated) {
    const [cut] = allowed(candidate);
    if (cut !== undefined) return cut;
  }
  return null;
}

const smallerPart = ({ parts: [a, b] }: Cut): number => Math.min(a.length, b.length);
