import {
  type CrosshairMove,
  FINE_STEP,
  moveCrosshair,
  nearestOnGrid,
  type Pointing,
  snapScene,
} from '@seamwright/drafting';
import { type LengthUnit, MM_PER_INCH, type Point, SNAP_DISTANCE } from '@seamwright/geometry';
import { blockBounds } from '../../canvas/bounds.ts';
import { announce } from '../../store/notices.ts';
import { currentBlock, pattern, useWork } from '../../store/work.ts';
import { lengthWords, originOf, placeWords } from '../../ui/measures.ts';
import { gridOf } from './grid-of.ts';
import { nudgeChosen, send, takeUp, useHand } from './hand.ts';

/** Inches: a thirty-second of an inch; a millimetre, where lengths are in centimetres. */
const fineStep = (unit: LengthUnit): number => (unit === 'in' ? FINE_STEP : 1 / MM_PER_INCH);

/** Moves the crosshair, which comes to the middle of the block when it was not there; false: there is no further place. */
export function goCrosshair(move: CrosshairMove): boolean {
  const work = useWork.getState();
  const { drawing } = currentBlock(work);
  const grid = gridOf(currentBlock(work));
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  const [width, height] = [maxX - minX, maxY - minY];
  const { crosshair } = useHand.getState();
  if (crosshair === null && move.kind === 'step') {
    put(nearestOnGrid({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 }, grid));
    return true;
  }
  if (crosshair === null) return false;
  const to = moveCrosshair(crosshair, move, {
    scene: snapScene(drawing),
    grid,
    fine: fineStep(pattern(work).unit),
    // Room for an outline that is larger than the one there is.
    within: { minX: minX - width, minY: minY - height, maxX: maxX + width, maxY: maxY + height },
  });
  if (to === null) return false;
  put(to);
  return true;
}

function put(at: Point): void {
  useHand.setState({ crosshair: at, finger: false });
  send({ type: 'move', ...exactly(at) });
  const { snap } = useHand.getState().preview;
  const work = useWork.getState();
  const place = placeWords(snap?.at ?? at, originOf(currentBlock(work).drawing), pattern(work).unit);
  announce(snap === undefined || snap.reason === '' ? place : `${place}, ${snap.reason}`);
}

/** The crosshair's "here". `adds`: to what is chosen. */
export function pressCrosshair(at: Point, adds: boolean): void {
  send({ type: 'press', ...exactly(at), adds });
}

const WAYS = {
  left: [-1, 0, 'to the left'],
  right: [1, 0, 'to the right'],
  up: [0, -1, 'up'],
  down: [0, 1, 'down'],
} as const;

/** Moves what is chosen one step of the grid that way, or finely; false: nothing is chosen. */
export function goNudge(toward: keyof typeof WAYS, fine: boolean): boolean {
  const work = useWork.getState();
  const { unit } = pattern(work);
  const { across, down } = gridOf(currentBlock(work));
  const [x, y, words] = WAYS[toward];
  const step = fine ? fineStep(unit) : x === 0 ? down : across;
  if (!nudgeChosen({ x: x * step, y: y * step })) return false;
  announce(`${lengthWords(step, unit)} ${words}`);
  return true;
}

/**
 * Takes the chosen point in hand without a drag: the drawing gets the focus, and the point is put down by the next
 * press. `byKeys`: the crosshair comes to it, and Enter puts it down.
 */
export function carryPoint({ x, y }: Point, byKeys: boolean): void {
  takeUp('adjust');
  send({ type: 'take' });
  focusDrawing();
  if (byKeys) put({ x, y });
  else useHand.setState({ crosshair: null });
}

/** Gives the drawing the focus, so that it has the keys. */
export function focusDrawing(): void {
  document.getElementById(CANVAS_PLACE)?.querySelector<HTMLElement>('[role="application"]')?.focus();
}

/** The id of the element that holds the drawing's canvas. */
export const CANVAS_PLACE = 'draft-drawing';

const exactly = (at: Point): Pointing => ({ at, reach: SNAP_DISTANCE, exact: true });
