import type { Arrangement, LineId } from '@seamwright/arrangement';
import type { SeamEnd } from './ways-on.ts';

/**
 * A ring of seams, or seams that meet in a corner, by the names of the drawn lines: each ends on the next. So it is known
 * again after the drawing was changed.
 */
export type EndingRing = readonly LineId[];

export const endingRing = (
  arrangement: Arrangement,
  ends: readonly Pick<SeamEnd, 'line' | 'vertex'>[],
): EndingRing =>
  ends.map(({ line, vertex }) => edgesAt(arrangement, vertex).find((edge) => edge.line === line)!.drawn[0]!);

/** Whether each of the lines ends on the next one, wherever that may be. */
export const hasRing = (arrangement: Arrangement, ring: EndingRing): boolean =>
  ring.every((drawn, i) => endsOn(arrangement, drawn, ring[(i + 1) % ring.length]!));

function endsOn(arrangement: Arrangement, drawn: LineId, other: LineId): boolean {
  const own = arrangement.edges.filter((edge) => edge.drawn.includes(drawn));
  return own.some(({ line, from, to }) =>
    [from, to].some((vertex) => {
      const here = edgesAt(arrangement, vertex);
      return (
        here.filter((edge) => edge.line === line).length === 1 &&
        here.some((edge) => edge.line !== line && edge.drawn.includes(other))
      );
    }),
  );
}

const edgesAt = ({ edges }: Arrangement, vertex: number) =>
  edges.filter(({ from, to }) => from === vertex || to === vertex);
