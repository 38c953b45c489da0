import type { Touching } from '../contact.ts';
import { isInside } from '../corners.ts';
import { type Region, ranksWithin, withMask } from '../region.ts';

/** A seam of a region as long as it runs straight on: from where it begins to where it ends, be it at another seam. */
export interface SeamRun {
  readonly index: number;
  readonly line: number;
  readonly edges: readonly number[];
  /** One more than edges, in the line's direction; those between the ends lie inside the region. */
  readonly vertices: readonly number[];
  /** For its start and its end: whether it stops there inside the region, at another seam, and not at its boundary. */
  readonly blocked: readonly [boolean, boolean];
}

/** One end of a run as the place to which someone walks who goes along it: 0 its start, 1 its end. */
export interface Heading {
  readonly run: number;
  readonly end: 0 | 1;
}

/** The seams of a region, and which of them meet at a vertex inside it. */
export interface Seams {
  readonly runs: readonly SeamRun[];
  /** For each vertex inside the region, the runs there and the place of the vertex in `vertices`. */
  readonly at: ReadonlyMap<number, readonly { readonly run: number; readonly place: number }[]>;
}

export const seamsOf = (touching: Touching, region: Region): Seams =>
  withMask(touching, region, (mask) => seamsWithin(touching, region, mask));

function seamsWithin(touching: Touching, region: Region, mask: Uint8Array): Seams {
  const inside = (vertex: number) => isInside(touching, mask, vertex);

  const runs: SeamRun[] = [];
  let edges: number[] = [];
  let vertices: number[] = [];
  let line = -1;
  const close = () => {
    if (edges.length === 0) return;
    const blocked = [inside(vertices[0]!), inside(vertices.at(-1)!)] as const;
    runs.push({ index: runs.length, line, edges, vertices, blocked });
    edges = [];
  };
  for (const rank of ranksWithin(touching, region, mask)) {
    const start = touching.start[rank]!;
    const goesOn = edges.length > 0 && touching.line[rank] === line && vertices.at(-1) === start;
    if (!goesOn || !inside(start)) {
      close();
      line = touching.line[rank]!;
      vertices = [start];
    }
    edges.push(touching.edge[rank]!);
    vertices.push(touching.end[rank]!);
  }
  close();

  const at = new Map<number, { run: number; place: number }[]>();
  for (const run of runs) {
    run.vertices.forEach((vertex, place) => {
      if (!inside(vertex)) return;
      const here = at.get(vertex);
      if (here === undefined) at.set(vertex, [{ run: run.index, place }]);
      else here.push({ run: run.index, place });
    });
  }
  return { runs, at };
}
