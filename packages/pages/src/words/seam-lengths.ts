import {
  type Box,
  distance,
  edgesOf,
  type LengthUnit,
  POINTS_PER_INCH,
  type Segment,
} from '@seamwright/geometry';
import { textMark } from '../marks/marks.ts';
import { textCorners } from '../marks/metrics.ts';
import type { TextMark } from '../marks/model.ts';
import { placeWord } from './edge-words.ts';
import { besideSeam } from './read-lengths.ts';

/** Points. */
const SIZE = 5.5;
const GAP = 2;

/**
 * The lengths of seam lines, each in the middle of its line and along it, on the side where there is room; where there is none on
 * either, none.
 *
 * @param lines sew lines, and edges of the outline
 * @param obstacles what they keep clear of, points
 * @param room where they may stand
 */
export function seamLengths(
  section: string,
  lines: readonly Segment<'page'>[],
  unit: LengthUnit,
  obstacles: readonly Segment<'page'>[],
  room: Box<'page'>,
): readonly TextMark[] {
  const placed: TextMark[] = [];
  for (const line of lines) {
    const word = besideSeam(distance(line.a, line.b) / POINTS_PER_INCH, unit);
    const taken = [...obstacles, ...placed.flatMap((text) => edgesOf(textCorners(text)))];
    const wanted = {
      word,
      size: SIZE,
      gap: GAP,
      edges: [line],
      obstacles: taken,
      room,
      from: 'middle',
    } as const;
    const found = placeWord({ ...wanted, side: 'inside' }) ?? placeWord({ ...wanted, side: 'outside' });
    if (found) placed.push(textMark('label', section, word, found.at, found.look));
  }
  return placed;
}
