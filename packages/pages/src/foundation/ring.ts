import type { Arrangement, Edge } from '@seamwright/arrangement';
import { type Point, type Transform, transformPoint } from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';

/** A vertex on a section's boundary, between the two edges of the boundary that meet there. */
export interface RingVertex {
  /** Index in the arrangement. */
  readonly vertex: number;
  readonly at: Point;
  readonly before: RingEdge;
  readonly after: RingEdge;
}

/** An edge of a section's boundary, walked clockwise on the screen. */
export interface RingEdge {
  readonly from: Point;
  readonly to: Point;
  /** Index of the arrangement's line. */
  readonly line: number;
  /** The patch on the far side; -1 outside the block. */
  readonly beyond: number;
}

/**
 * The section's boundary, vertex by vertex, clockwise, with what the arrangement knows of it: which line each edge
 * lies on and what lies beyond. What is straight is read off the lines, not computed from coordinates.
 *
 * @param place from the block as drawn to where the result is wanted
 */
export function sectionRing(
  arrangement: Arrangement,
  section: Section,
  place: Transform,
): readonly RingVertex[] {
  const between = new Map<string, Edge>();
  for (const edge of arrangement.edges) {
    between.set(`${edge.from} ${edge.to}`, edge);
    between.set(`${edge.to} ${edge.from}`, edge);
  }
  const own = new Set(section.order);
  const points = section.ring.map((vertex) => transformPoint(place, arrangement.vertices[vertex]!.at));
  const count = section.ring.length;
  const edges = section.ring.map((vertex, i): RingEdge => {
    const next = section.ring[(i + 1) % count]!;
    const edge = between.get(`${vertex} ${next}`);
    if (edge === undefined)
      throw new RangeError(`Section ${section.letter}: no edge joins vertices ${vertex} and ${next}`);
    return {
      from: points[i]!,
      to: points[(i + 1) % count]!,
      line: edge.line,
      beyond: own.has(edge.left) ? edge.right : edge.left,
    };
  });
  return section.ring.map((vertex, i) => ({
    vertex,
    at: points[i]!,
    before: edges[(i + count - 1) % count]!,
    after: edges[i]!,
  }));
}
