import { patchAt } from '../../canvas/patch-at.ts';
import type { CanvasPointer } from '../../canvas/pointer.ts';
import { select, selectNothing, togglePatch } from '../../store/selection.ts';
import { useWork } from '../../store/work.ts';
import { send, useHand } from './hand.ts';
import type { Held } from './held.ts';

/** Whether a mouse button or finger is down on the drawing. */
let isDown = false;

/**
 * Passes what a mouse or finger does to the tool in hand. With Shift held down nothing pulls from afar, and a press with the
 * adjusting tool adds to what is chosen.
 */
export function drawByPointer({ kind, at, reach, touch, shift }: CanvasPointer): void {
  const hand = useHand.getState();
  switch (kind) {
    case 'down':
      isDown = true;
      useHand.setState({ crosshair: null, finger: touch });
      send({ type: 'down', at, reach, exact: shift, adds: shift || hand.adds });
      return;
    case 'move':
      // A mouse that is nudged while keys are used does not take over.
      if (hand.crosshair !== null && !isDown) return;
      useHand.setState({ finger: touch });
      send({ type: 'move', at, reach, exact: shift });
      return;
    case 'up':
      isDown = false;
      send({ type: 'up', at, reach, exact: shift });
      if (touch) send({ type: 'leave' });
      if (isPressBesideParts(hand.held)) choosePatch(at, shift || hand.adds);
      return;
    case 'cancel':
      isDown = false;
      send({ type: 'cancel' });
      return;
    case 'leave':
      if (hand.crosshair === null) send({ type: 'leave' });
  }
}

const isPressBesideParts = ({ tool, state }: Held): boolean =>
  tool === 'adjust' && state.kind === 'pressing' && state.on === undefined;

/** A press with the adjusting tool on neither point nor line takes the patch there in hand, or one more. */
function choosePatch(at: CanvasPointer['at'], adds: boolean): void {
  const { selection, study } = useWork.getState();
  if (selection.points.length > 0 || selection.lines.length > 0) return;
  const arrangement = study?.arrangement ?? null;
  const patch = arrangement === null ? undefined : patchAt(arrangement, at);
  const record = patch === undefined ? undefined : study?.records[patch.index];
  if (record === undefined) {
    if (!adds) selectNothing();
  } else if (adds) togglePatch(record.id);
  else select({ patches: [record.id] });
}
