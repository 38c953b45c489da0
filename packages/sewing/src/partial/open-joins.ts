import type { Arrangement } from '@seamwright/arrangement';
import { dot, midpoint, type Segment, subtract } from '@seamwright/geometry';
import type { Join, Section } from '../types.ts';
import type { Slit } from './slit.ts';

/**
 * The joins of a plan with its partial seams: each slit makes the join that sews its tip a partial one, which tells what is left
 * open and after which join that is closed.
 *
 * A seam is closed as soon as all is there that lies on both sides of it, but not before a seam that opens into it.
 *
 * @param joins in working order, without what is open: as written from a `PartialAssembly`
 */
export function openJoins(
  arrangement: Arrangement,
  sections: readonly Section[],
  joins: readonly Join[],
  slits: readonly Slit[],
): Join[] {
  const made = unitsOf(sections, joins);
  const sidesOf = (edge: number): readonly [number, number] => {
    const { left, right } = arrangement.edges[edge]!;
    return [left, right];
  };
  const whole = (edge: number, join: number) => sidesOf(edge).every((p) => made[join]!.has(p));
  const firstWith = (edges: readonly number[]) =>
    joins.findIndex((_, join) => edges.every((edge) => whole(edge, join)));

  const closed = slits.map(({ tip, open }) => firstWith([tip, ...open]));
  // Seams that open into others come before them.
  slits.forEach(({ vertices }, i) => {
    const outer = vertices.at(-1)!;
    slits.forEach((other, k) => {
      if (k > i && other.vertices.slice(0, -1).includes(outer)) closed[k] = Math.max(closed[k]!, closed[i]!);
    });
  });

  const partial = [...joins];
  slits.forEach(({ tip, vertices }, i) => {
    const index = firstWith([tip]);
    const at = (vertex: number) => arrangement.vertices[vertex]!.at;
    const { from, to } = arrangement.edges[tip]!;
    const outer = at(vertices.at(-1)!);
    const open: Segment = { a: midpoint(at(from), at(to)), b: outer };
    const { a, b } = joins[index]!.seam;
    const outwards = dot(subtract(b, a), subtract(outer, open.a)) > 0;
    partial[index] = {
      ...joins[index]!,
      seam: outwards ? { a, b } : { a: b, b: a },
      partial: true,
      open: { seam: open, closedAfter: closed[i]! },
    };
  });
  return partial;
}

/** For each join, the patches of the unit that it makes. */
function unitsOf(sections: readonly Section[], joins: readonly Join[]): ReadonlySet<number>[] {
  const units = new Map(sections.map(({ letter, order }) => [letter, new Set(order)]));
  return joins.map(({ units: [a, b], makes }) => {
    const made = new Set([...units.get(a)!, ...units.get(b)!]);
    units.set(makes, made);
    return made;
  });
}
