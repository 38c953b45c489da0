import type { Arrangement, Edge, LineId } from '@seamwright/arrangement';
import type { SeamEnd } from './ways-on.ts';

/**
 * A ring of seams, or seams that meet in a corner, by the names of the drawn lines: each ends on the next. So it is known
 * again after the drawing was changed.
 */
export type EndingRing = readonly LineId[];

/** Which drawn lines end on which. */
export class Endings {
  private readonly edgesAt: Edge[][];
  private readonly edgesOf = new Map<LineId, Edge[]>();

  constructor({ edges, vertices }: Arrangement) {
    this.edgesAt = vertices.map(() => []);
    for (const edge of edges) {
      for (const vertex of [edge.from, edge.to]) this.edgesAt[vertex]!.push(edge);
      for (const id of edge.drawn) {
        const own = this.edgesOf.get(id);
        if (own === undefined) this.edgesOf.set(id, [edge]);
        else own.push(edge);
      }
    }
  }

  ringOf(ends: readonly Pick<SeamEnd, 'line' | 'vertex'>[]): EndingRing {
    return ends.map(
      ({ line, vertex }) => this.edgesAt[vertex]!.find((edge) => edge.line === line)!.drawn[0]!,
    );
  }

  /** Whether each of the lines ends on the next one, wherever that may be. */
  hasRing(ring: EndingRing): boolean {
    return ring.every((drawn, i) => this.endsOn(drawn, ring[(i + 1) % ring.length]!));
  }

  private endsOn(drawn: LineId, other: LineId): boolean {
    return (this.edgesOf.get(drawn) ?? []).some(({ line, from, to }) =>
      [from, to].some((vertex) => {
        const here = this.edgesAt[vertex]!;
        return (
          here.filter((edge) => edge.line === line).length === 1 &&
          here.some((edge) => edge.line !== line && edge.drawn.includes(other))
        );
      }),
    );
  }
}
