import { type Link, Outgoing, opposite, originOf } from './graph.ts';
import type { Place } from './incidence.ts';

/** Joins links at places where nothing but one straight line passes. */
export function withoutStraightPlaces(links: readonly Link[], places: readonly Place[]): Link[] {
  const outgoing = new Outgoing(links);
  const lineOf = (place: number, i: number) => links[outgoing.half(place, i) >> 1]!.line;
  const passable = (place: number, line: number) =>
    !places[place]!.corner &&
    outgoing.degree(place) === 2 &&
    lineOf(place, 0) === line &&
    lineOf(place, 1) === line;

  const done = new Uint8Array(links.length);
  const joined: Link[] = [];
  links.forEach((link, start) => {
    if (done[start] === 1) return;
    done[start] = 1;
    const drawn = [...link.drawn];
    const follow = (from: number, place: number): number => {
      let here = place;
      let last = from;
      while (passable(here, link.line)) {
        const onward = outgoing.half(here, outgoing.half(here, 0) >> 1 === last ? 1 : 0);
        last = onward >> 1;
        if (done[last] === 1) break;
        done[last] = 1;
        drawn.push(...links[last]!.drawn);
        here = originOf(links, opposite(onward));
      }
      return here;
    };
    const to = follow(start, link.to);
    const from = follow(start, link.from);
    joined.push({ ...link, from, to, drawn: drawn.length === 1 ? drawn : [...new Set(drawn)].sort() });
  });
  return joined;
}
