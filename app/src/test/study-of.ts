import { arrange, carryPatches, drawingFromSegments } from '@seamwright/arrangement';
import { NO_WISHES, resolvePins, type SewingWishes } from '@seamwright/pattern';
import { planSewing, SHAPE_LIMITS, shapeFindings } from '@seamwright/sewing';
import type { Study } from '../study/study.ts';
import { toStudy } from '../study/to-study.ts';

const SQUARE = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 4 },
  { x: 0, y: 4 },
];

/** A line: x1, y1, x2, y2. */
export type Stroke = readonly [number, number, number, number];

/** Four oblongs that chase each other round a square: no straight seams sew them. */
export const RING: readonly Stroke[] = [
  [1, 0, 1, 3],
  [0, 3, 3, 3],
  [3, 1, 3, 4],
  [1, 1, 4, 1],
];

/** The quick study of a 4 in square with lines. Its patches are called `patch1`, `patch2` … */
export function studyOf(lines: readonly Stroke[], wishes: SewingWishes = NO_WISHES): Study {
  const segments = lines.map(([x1, y1, x2, y2]) => ({ a: { x: x1, y: y1 }, b: { x: x2, y: y2 } }));
  const drawing = drawingFromSegments(SQUARE, segments);
  const arrangement = arrange(drawing);
  if (!arrangement.ok) throw new Error(arrangement.problem.what);
  const records = carryPatches([], arrangement.value, []);
  const { pins } = resolvePins(wishes.pins, records);
  const answer = {
    arrangement: arrangement.value,
    problem: null,
    plan: planSewing(arrangement.value, { pins }),
    shapes: shapeFindings(arrangement.value),
    records,
  };
  return toStudy(answer, { blockId: 'b', drawing, wishes, limits: SHAPE_LIMITS });
}
