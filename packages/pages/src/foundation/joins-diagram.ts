import {
  boundingBox,
  compose,
  deepestPoint,
  reflection,
  rotation,
  scaling,
  transformPolygon,
  translation,
} from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import type { CheckedJob } from '../job.ts';
import { polygonMark, QUIET, STROKES, textMark } from '../marks/marks.ts';
import { CAP_HEIGHT, textWidth } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import type { Foundation } from './foundation.ts';
import { DEGREES, type Turn } from './turns.ts';

/** A small picture, its top left corner at (0, 0); points. */
export interface Diagram {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
}

/** The longer side, points: under 1/2 in, so that nobody takes it for a check square. */
const SIDE = 28;

/** Ink of the sections that are sewn on prints of the foundation: the palest that a home printer holds. */
const SHADE = 0.3;

/** Of more sections than these only those are drawn that are sewn on prints of the foundation: the others would be a grey mesh. */
const MOST_SECTIONS = 25;

/** Sizes that are tried for the letters, points. */
const LETTER_SIZES: readonly number[] = [8, 7, 6, 5.5];

/**
 * The block in small, as it is seen with the foundation's printed side up and lying as the foundation does: the sections
 * with their letters (of very many sections only its own), those that are sewn on prints of it shaded. null where there is but one section.
 */
export function joinsDiagram(job: CheckedJob, foundation: Foundation, turn: Turn): Diagram | null {
  const { sections } = job.plan;
  if (sections.length < 2) return null;
  const facing = foundation.mirroredBlock ? scaling(1) : reflection(0);
  const lying = compose(facing, rotation(DEGREES[turn]));
  const block = transformPolygon(lying, job.arrangement.outline);
  const { minX, minY, maxX, maxY } = boundingBox(block);
  const scale = SIDE / Math.max(maxX - minX, maxY - minY);
  const place = compose(translation(-minX, -minY), scaling<'block', 'page'>(scale));
  const { key, letters } = foundation;
  const toPicture = compose(lying, place);
  const isOwn = ({ letter }: Section) => letters.includes(letter);
  const shapes = (sections.length > MOST_SECTIONS ? sections.filter(isOwn) : sections).map((section) => ({
    letter: section.letter,
    own: isOwn(section),
    outline: transformPolygon(toPicture, section.outline),
  }));
  const rim = polygonMark('caption', key, transformPolygon(place, block), STROKES.diagram);
  const paths = shapes.map(({ own, outline }) => ({
    ...polygonMark('caption', key, outline, STROKES.diagram),
    ...(own && { fill: SHADE }),
  }));
  const words = shapes.flatMap(({ letter, own, outline }) => {
    const { at, depth } = deepestPoint(outline);
    const weight = own ? 'semibold' : 'regular';
    const size = LETTER_SIZES.find(
      (s) => Math.hypot(textWidth(letter, s, weight), CAP_HEIGHT * s) / 2 < depth,
    );
    if (size === undefined) return [];
    const base = { x: at.x, y: at.y + (CAP_HEIGHT * size) / 2 };
    return [textMark('caption', key, letter, base, { size, weight, anchor: 'middle', ink: own ? 1 : QUIET })];
  });
  return {
    marks: [...paths, ...(sections.length > MOST_SECTIONS ? [rim] : []), ...words],
    width: (maxX - minX) * scale,
    height: (maxY - minY) * scale,
  };
}
