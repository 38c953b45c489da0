import { FINE_STEP } from '@seamwright/drafting';
import { type LengthUnit, MM_PER_INCH, type Point } from '@seamwright/geometry';
import { movePicture, pixelAt, type Tracing } from '@seamwright/pattern';
import type { KeyboardEvent } from 'react';
import { endStep } from '../../../store/changes.ts';
import { announce } from '../../../store/notices.ts';
import { currentBlock, pattern, useWork } from '../../../store/work.ts';
import { originOf, placeWords } from '../../../ui/measures.ts';
import { gridOf } from '../grid-of.ts';
import { stopPlacing, usePlacing } from './placing.ts';
import { placingWords } from './placing-words.ts';
import { putPoint } from './put-point.ts';
import { changeTracing, currentTracing } from './tracing-edits.ts';

const WAYS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Inches: a thirty-second of an inch; a millimetre, where lengths are in centimetres. */
const fineStep = (unit: LengthUnit): number => (unit === 'in' ? FINE_STEP : 1 / MM_PER_INCH);

/** What keys do on the drawing while the picture is in hand. True: the key was used. */
export function placeByKey(
  event: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>,
): boolean {
  const tracing = currentTracing(useWork.getState());
  if (tracing === undefined || event.ctrlKey || event.metaKey || event.altKey) return false;
  const { kind } = usePlacing.getState();
  const way = WAYS[event.key];
  if (way !== undefined) {
    const by = stepOf(way, event.shiftKey);
    if (kind === 'moving') nudge(by);
    else moveCrosshair(by);
    return true;
  }
  if (event.key === 'Enter') return kind === 'moving' ? leave() : point(tracing);
  if (event.key === 'Escape') return kind === 'moving' ? leave() : goBack();
  return false;
}

function stepOf([x, y]: readonly [number, number], fine: boolean): Point {
  const work = useWork.getState();
  const { across, down } = gridOf(currentBlock(work));
  const step = fineStep(pattern(work).unit);
  return fine ? { x: x * step, y: y * step } : { x: x * across, y: y * down };
}

function nudge(by: Point): void {
  changeTracing('Move the picture', (tracing) => movePicture(tracing, by.x, by.y), 'nudge the picture');
  announce('Picture moved');
}

function leave(): boolean {
  endStep();
  stopPlacing();
  announce('The picture stays here');
  return true;
}

/** The crosshair comes to the middle of the picture when it is not there. */
function moveCrosshair(by: Point): void {
  const work = useWork.getState();
  const tracing = currentTracing(work)!;
  const { crosshair } = usePlacing.getState();
  const to =
    crosshair === null ? { x: tracing.x, y: tracing.y } : { x: crosshair.x + by.x, y: crosshair.y + by.y };
  usePlacing.setState({ crosshair: to });
  announce(placeWords(to, originOf(currentBlock(work).drawing), pattern(work).unit));
}

function point(tracing: Tracing): boolean {
  const { crosshair, points } = usePlacing.getState();
  if (crosshair === null) moveCrosshair({ x: 0, y: 0 });
  else putPoint(pixelAt(tracing, tracing.picture, crosshair), points.length, true);
  return true;
}

/** The last point; then the picture is let go. */
function goBack(): boolean {
  const { points } = usePlacing.getState();
  if (points.length === 0) return leave();
  usePlacing.setState({ points: points.slice(0, -1), preview: null });
  announce(placingWords('pointing', points.length - 1));
  return true;
}
