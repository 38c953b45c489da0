import {
  formatLength,
  type LengthUnit,
  MM_PER_INCH,
  POINTS_PER_INCH,
  type Point,
} from '@seamwright/geometry';
import { QUIET, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import type { Mark } from '../marks/model.ts';
import { POINTS_PER_MM } from './paper.ts';

/** Points: kept free for the number at the ruler's end. */
const END = 8;

/** Points: ticks at whole units, at halves, and between. */
const TICKS = { whole: 12, half: 8, part: 5 };

/** What one step of the ruler is, points, and how many make a whole unit. */
const STEPS = {
  in: { step: POINTS_PER_INCH / 8, perUnit: 8 },
  cm: { step: 2 * POINTS_PER_MM, perUnit: 5 },
} as const satisfies Record<LengthUnit, { step: number; perUnit: number }>;

/** The longest ruler of whole units that fits in so many points; inches. */
export function longestRuler(room: number, unit: LengthUnit): number {
  const { step, perUnit } = STEPS[unit];
  const units = Math.floor((room - 2 * END) / (step * perUnit));
  return unit === 'in' ? units : (units * 10) / MM_PER_INCH;
}

/**
 * A ruler of so many inches. `across` begins below (0, 0) and runs to the right, its ticks hanging down; `down` runs down at
 * x = 0, which is its right edge, its ticks to the left. Both begin {@link END} points in.
 */
export function rulerMarks(direction: 'across' | 'down', length: number, unit: LengthUnit): readonly Mark[] {
  const { step, perUnit } = STEPS[unit];
  const full = length * POINTS_PER_INCH;
  const count = Math.round(full / step);
  /** The point at `along` on the ruler, `off` points to the side of its ticks. */
  const at = (along: number, off: number): Point<'page'> =>
    direction === 'across' ? { x: END + along, y: off } : { x: -off, y: END + along };
  const line = (a: Point<'page'>, b: Point<'page'>) =>
    segmentMark('footer', undefined, { a, b }, STROKES.checkSquare);
  const marks: Mark[] = [line(at(0, 0), at(full, 0))];
  for (let i = 0; i <= count; i++) {
    const whole = i % perUnit === 0;
    const half = perUnit % 2 === 0 && i % (perUnit / 2) === 0;
    const size = whole ? TICKS.whole : half ? TICKS.half : TICKS.part;
    // The last one exactly at the end.
    const along = i === count ? full : i * step;
    marks.push(line(at(along, 0), at(along, size)));
    if (whole) marks.push(numberAt(direction, at(along, TICKS.whole), i / perUnit));
  }
  const words = `${formatLength(length, unit)} from end to end`;
  const middle = at(full / 2, TICKS.whole + 19);
  marks.push(
    textMark('footer', undefined, words, middle, {
      size: 8,
      ink: QUIET,
      anchor: 'middle',
      angle: direction === 'across' ? 0 : -90,
    }),
  );
  return marks;
}

const numberAt = (direction: 'across' | 'down', { x, y }: Point<'page'>, number: number): Mark =>
  direction === 'across'
    ? textMark('footer', undefined, `${number}`, { x, y: y + 8 }, { size: 7.5, anchor: 'middle' })
    : textMark('footer', undefined, `${number}`, { x: x - 2, y: y + 2.5 }, { size: 7.5, anchor: 'end' });
