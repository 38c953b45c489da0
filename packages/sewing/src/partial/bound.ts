import type { Arrangement } from '@seamwright/arrangement';
import type { Joinery } from '../assemble.ts';
import type { Touching } from '../contact.ts';
import { patchesRound } from '../corners.ts';
import { middleEdges, type Ring, shortestRing, windmills } from '../diagnosis/rings.ts';
import { seamsOf } from '../diagnosis/seam-runs.ts';
import { stuckParts } from '../diagnosis/stuck-parts.ts';

/**
 * Foundations that a block takes at least which straight seams do not suffice for. On two there is one join. A seam left open is
 * sewn half-way by a join on its own line, so all open seams are on the line of that one; closed again, they are straight
 * contact like the rest of it, and straight seams would have sufficed.
 */
const LEAST = 3;

/**
 * A proved lower bound on the foundations of a block that takes partial seams, whichever seams are left open, and how many: one
 * more than the lines of which each has a join of its own. (Derived here; docs/decisions/0011 has the proofs.)
 *
 * - A ring of seams of which each ends on the next: there is a join on the line of every one of them, wherever nothing but
 *   T-junctions lies on the ring.
 * - A crossing: there is a join on one of the lines that end in it or pass through it. Crossings without a common line need one
 *   each, beside those of the rings that share no line with them.
 *
 * @param largestSection no foundation holds more patches
 */
export function leastWithPartialSeams(
  { arrangement, touching, crossings }: Joinery,
  largestSection: number,
): number {
  const all = arrangement.patches.map(({ index }) => index);
  const linesAt = linesRound(arrangement);
  const lines = new Set<number>();
  for (const part of stuckParts(touching, all)) {
    const seams = seamsOf(touching, part);
    const shortest = shortestRing(arrangement, seams);
    const rings = [...windmills(arrangement, seams), ...(shortest === null ? [] : [shortest])];
    for (const ring of rings) {
      if (!hasOnlyTees(arrangement, touching, linesAt, middleEdges(seams, ring), ring)) continue;
      for (const { run } of ring.seams) lines.add(seams.runs[run]!.line);
    }
  }
  let joins = lines.size;
  for (const own of crossings.map(({ vertex }) => linesAt[vertex]!).sort((p, q) => p.size - q.size)) {
    if ([...own].some((line) => lines.has(line))) continue;
    joins += 1;
    for (const line of own) lines.add(line);
  }
  return Math.max(LEAST, joins + 1, Math.ceil(touching.count / largestSection));
}

/** Whether at every vertex of a ring one seam ends on another that runs straight through, and no third one meets them. */
function hasOnlyTees(
  { edges }: Arrangement,
  touching: Touching,
  linesAt: readonly ReadonlySet<number>[],
  sides: readonly number[],
  { kind }: Ring,
): boolean {
  if (kind === 'corner') return false;
  const vertices = sides.flatMap((edge) => [edges[edge]!.from, edges[edge]!.to]);
  return vertices.every((vertex) => {
    const atMostThree = patchesRound(touching, vertex).length <= 3;
    return atMostThree && touching.outer[vertex] === 0 && linesAt[vertex]!.size <= 2;
  });
}

/** For each vertex, the lines that end in it or pass through it. */
function linesRound({ vertices, edges }: Arrangement): ReadonlySet<number>[] {
  const lines = vertices.map(() => new Set<number>());
  for (const { from, to, line } of edges) {
    lines[from]!.add(line);
    lines[to]!.add(line);
  }
  return lines;
}
