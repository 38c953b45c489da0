import { add, type Point, type Segment } from '@seamwright/geometry';
import { STROKES } from '../marks/marks.ts';
import type { PathMark } from '../marks/model.ts';

/** The dot at the leader's end, points: half its width, and less in a patch that it would hide. */
const DOT = 1.3;
const LEAST_DOT = 0.8;

/** One path, so that who looks for sew lines (two points) does not take it for one: to the dot, and round it. */
export function leaderMark(section: string, { a, b }: Segment<'page'>, depth: number): PathMark {
  const radius = Math.min(DOT, Math.max(LEAST_DOT, depth / 2));
  const rim = Array.from({ length: 9 }, (_, i): Point<'page'> => {
    const angle = (i * Math.PI) / 4;
    return add(b, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
  });
  const stroke = STROKES.leader;
  return {
    kind: 'path',
    role: 'label',
    section,
    points: [a, b, ...rim],
    closed: false,
    stroke,
    fill: stroke.ink,
  };
}
