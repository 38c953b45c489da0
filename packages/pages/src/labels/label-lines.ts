import { type Point, rotation, transformPoint } from '@seamwright/geometry';
import { textMark } from '../marks/marks.ts';
import { CAP_HEIGHT, textWidth } from '../marks/metrics.ts';
import type { TextMark, Weight } from '../marks/model.ts';
import type { Plate } from './plate.ts';

/** One line of a label. */
export interface LabelLine {
  readonly content: string;
  /** Points. */
  readonly size: number;
  readonly weight: Weight;
  readonly ink: number;
}

/** From a line's base to the top of the next, in sizes of the next: room for the tails of letters. */
const LEADING = 0.55;

/** What the lines cover, set one under the other round `centre`. */
export function plateOf(lines: readonly LabelLine[], centre: Point<'page'>, angle: number): Plate {
  const width = Math.max(...lines.map(({ content, size, weight }) => textWidth(content, size, weight)));
  return { centre, halfWidth: width / 2, halfHeight: heightOf(lines) / 2, angle };
}

const heightOf = (lines: readonly LabelLine[]): number =>
  lines.reduce((sum, { size }, i) => sum + size * (CAP_HEIGHT + (i === 0 ? 0 : LEADING)), 0);

/** The lines as texts on their plate. */
export function linesOn(section: string, lines: readonly LabelLine[], plate: Plate): readonly TextMark[] {
  const { centre, halfHeight, angle } = plate;
  const turn = rotation<'page'>(angle, centre);
  let base = centre.y - halfHeight;
  return lines.map(({ content, size, weight, ink }, i) => {
    base += size * (CAP_HEIGHT + (i === 0 ? 0 : LEADING));
    const at = transformPoint(turn, { x: centre.x, y: base });
    return textMark('label', section, content, at, { size, weight, ink, angle, anchor: 'middle' });
  });
}
