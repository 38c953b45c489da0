import { distance, type Point, transformPoint } from '@seamwright/geometry';
import { movePicture, pictureToBlock, pixelAt, type Tracing } from '@seamwright/pattern';
import type { CanvasPointer } from '../../../canvas/pointer.ts';
import { useWork } from '../../../store/work.ts';
import { previewPlacing, usePlacing } from './placing.ts';
import { putPoint } from './put-point.ts';
import { changeTracing, currentTracing } from './tracing-edits.ts';

/** What the pointer that is down has hold of: the picture as it lay, or a point of it. */
type Hold =
  | { readonly what: 'picture'; readonly from: Point; readonly as: Tracing }
  | { readonly what: 'point'; readonly index: number };

let hold: Hold | null = null;

/** What a mouse or finger does while the picture is in hand. */
export function placeByPointer(event: CanvasPointer): void {
  const tracing = currentTracing(useWork.getState());
  if (tracing === undefined) return;
  usePlacing.setState({ crosshair: null });
  switch (event.kind) {
    case 'down':
      hold = takeHold(event, tracing);
      if (hold.what === 'point') usePlacing.setState({ under: event.at });
      return;
    case 'move':
      if (hold?.what === 'picture') previewPlacing(dragged(hold, event.at));
      if (hold?.what === 'point') usePlacing.setState({ under: event.at });
      return;
    case 'up':
      letGo(event, tracing);
      return;
    case 'cancel':
      hold = null;
      usePlacing.setState({ under: null, preview: null });
  }
}

function takeHold({ at, reach }: CanvasPointer, tracing: Tracing): Hold {
  const { kind, points } = usePlacing.getState();
  if (kind === 'moving') return { what: 'picture', from: at, as: tracing };
  const t = pictureToBlock(tracing, tracing.picture);
  const near = points.findIndex((point) => distance(transformPoint(t, point), at) <= reach);
  return { what: 'point', index: near < 0 ? points.length : near };
}

const dragged = ({ from, as }: Hold & { readonly what: 'picture' }, to: Point): Tracing =>
  movePicture(as, to.x - from.x, to.y - from.y);

function letGo({ at, touch }: CanvasPointer, tracing: Tracing): void {
  const held = hold;
  hold = null;
  if (held?.what === 'point') putPoint(pixelAt(tracing, tracing.picture, at), held.index, !touch);
  if (held?.what !== 'picture') return;
  const moved = dragged(held, at);
  previewPlacing(null);
  if (moved.x !== tracing.x || moved.y !== tracing.y) changeTracing('Move the picture', () => moved);
}
