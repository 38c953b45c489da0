import { type CrosshairMove, FINE_STEP, moveCrosshair, type Pointing, snapScene } from '@seamwright/drafting';
import { MM_PER_INCH, type Point, SNAP_DISTANCE } from '@seamwright/geometry';
import { blockBounds } from '../../canvas/bounds.ts';
import { announce } from '../../store/notices.ts';
import { currentBlock, pattern, useWork } from '../../store/work.ts';
import { send, takeUp, useHand } from './hand.ts';
import { originOf, placeWords } from './measures.ts';

/** One millimetre, where lengths are in centimetres. */
const FINE_METRIC = 1 / MM_PER_INCH;

/** Moves the crosshair, which comes to the middle of the block when it was not there; false: there is no further place. */
export function goCrosshair(move: CrosshairMove): boolean {
  const work = useWork.getState();
  const { drawing, grid } = currentBlock(work);
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  const [width, height] = [maxX - minX, maxY - minY];
  const { crosshair } = useHand.getState();
  if (crosshair === null && move.kind === 'step') {
    put({ x: nearestMultiple((minX + maxX) / 2, grid), y: nearestMultiple((minY + maxY) / 2, grid) });
    return true;
  }
  if (crosshair === null) return false;
  const to = moveCrosshair(crosshair, move, {
    scene: snapScene(drawing),
    grid,
    fine: pattern(work).unit === 'in' ? FINE_STEP : FINE_METRIC,
    // Room for an outline that is larger than the one there is.
    within: { minX: minX - width, minY: minY - height, maxX: maxX + width, maxY: maxY + height },
  });
  if (to === null) return false;
  put(to);
  return true;
}

const nearestMultiple = (value: number, step: number): number => Math.round(value / step) * step + 0;

function put(at: Point): void {
  useHand.setState({ crosshair: at, finger: false });
  send({ type: 'move', ...exactly(at) });
  const { snap } = useHand.getState().preview;
  const work = useWork.getState();
  const place = placeWords(snap?.at ?? at, originOf(currentBlock(work).drawing), pattern(work).unit);
  announce(snap === undefined || snap.reason === '' ? place : `${place}, ${snap.reason}`);
}

/** The crosshair's "here". */
export function pressCrosshair(at: Point): void {
  send({ type: 'press', ...exactly(at) });
}

/**
 * Takes the chosen point in hand without a drag: the drawing gets the focus, and the point is put down by the next
 * press. `byKeys`: the crosshair comes to it, and Enter puts it down.
 */
export function carryPoint({ x, y }: Point, byKeys: boolean): void {
  takeUp('adjust');
  send({ type: 'take' });
  document.getElementById(CANVAS_PLACE)?.querySelector<HTMLElement>('[role="application"]')?.focus();
  if (byKeys) put({ x, y });
  else useHand.setState({ crosshair: null });
}

/** The id of the element that holds the drawing's canvas. */
export const CANVAS_PLACE = 'draft-drawing';

const exactly = (at: Point): Pointing => ({ at, reach: SNAP_DISTANCE, exact: true });
