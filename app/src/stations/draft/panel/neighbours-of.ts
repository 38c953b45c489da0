import type { LineId } from '@seamwright/arrangement';
import { drawnLines } from '@seamwright/drafting';
import { nearestOnSegment, type Segment } from '@seamwright/geometry';
import type { Study } from '../../../study/study.ts';

/** The patches on the other side of a patch's seams, by index, with the stretches of drawn lines between the two. */
export function neighboursOf(study: Study, index: number): ReadonlyMap<number, readonly Segment[]> {
  const { arrangement, drawing } = study;
  const found = new Map<number, Segment[]>();
  for (const border of arrangement?.patches[index]?.border ?? []) {
    const { left, right, drawn, from, to } = arrangement!.edges[border]!;
    const other = left === index ? right : left;
    if (other < 0 || other === index) continue;
    const ends = [from, to].map((vertex) => arrangement!.vertices[vertex]!.at);
    const stretches = drawn.flatMap((id: LineId): Segment[] => {
      const line = drawnLines(drawing).get(id);
      if (line === undefined) return [];
      // The arrangement takes places for one that lie a little apart: as they were drawn, they are on the line.
      const [a, b] = ends.map((end) => nearestOnSegment(end, line.from, line.to));
      return [{ a: a!, b: b! }];
    });
    found.set(other, [...(found.get(other) ?? []), ...stretches]);
  }
  return found;
}
