import type { KeyboardEvent } from 'react';
import { announce } from '../../store/notices.ts';
import { selectNothing } from '../../store/selection.ts';
import { NOTHING, useWork } from '../../store/work.ts';
import { goCrosshair, pressCrosshair } from './crosshair.ts';
import { deleteChosen, isBusy, send, useHand } from './hand.ts';

const ARROWS = { ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'up', ArrowDown: 'down' } as const;

const isArrow = (key: string): key is keyof typeof ARROWS => key in ARROWS;

/** What keys do while the drawing has the focus. True: the key was used. */
export function drawByKey(event: KeyboardEvent): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  const { key, shiftKey } = event;
  if (isArrow(key)) return goCrosshair({ kind: 'step', toward: ARROWS[key], fine: shiftKey });
  switch (key) {
    case 'Tab':
      return goCrosshair({ kind: 'place', toward: shiftKey ? 'previous' : 'next' });
    case 'Enter':
      return enter();
    case 'Escape':
      return goBack();
    case 'Delete':
    case 'Backspace':
      if (useHand.getState().held.tool === 'outline') send({ type: 'back' });
      else deleteChosen();
      return true;
    default:
      return false;
  }
}

function enter(): boolean {
  const hand = useHand.getState();
  if (hand.crosshair !== null) pressCrosshair(hand.crosshair);
  else if (hand.held.tool === 'outline' && isBusy(hand)) send({ type: 'finish' });
  else return goCrosshair({ kind: 'step', toward: 'up', fine: false });
  return true;
}

/**
 * Back by one step; then the crosshair goes, so that the Tab key leaves the drawing; then what is chosen is let go;
 * then the key is not ours.
 */
function goBack(): boolean {
  const hand = useHand.getState();
  if (isBusy(hand)) send({ type: 'back' });
  else if (hand.crosshair !== null) {
    useHand.setState({ crosshair: null, preview: {} });
    announce('Crosshair away');
  } else if (useWork.getState().selection !== NOTHING) selectNothing();
  else return false;
  return true;
}
