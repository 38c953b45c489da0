import type { KeyboardEvent } from 'react';
import { announce } from '../../store/notices.ts';
import { selectNothing } from '../../store/selection.ts';
import { NOTHING, useWork } from '../../store/work.ts';
import { goCrosshair, goNudge, pressCrosshair } from './crosshair.ts';
import { deleteChosen, type Hand, isBusy, send, useHand } from './hand.ts';
import { typeLength } from './typed-measure.ts';

const ARROWS = { ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'up', ArrowDown: 'down' } as const;

const isArrow = (key: string): key is keyof typeof ARROWS => key in ARROWS;

/** What keys do while the drawing has the focus. True: the key was used. */
export function drawByKey(event: KeyboardEvent): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  const { key, shiftKey } = event;
  if (isArrow(key)) return arrow(ARROWS[key], shiftKey);
  if (TYPED.test(key) && hasFirstEnd(useHand.getState())) return typeLength(key);
  switch (key) {
    case 'Tab':
      return goCrosshair({ kind: 'place', toward: shiftKey ? 'previous' : 'next' });
    case 'Enter':
      return enter(shiftKey);
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

/** What a length begins with. */
const TYPED = /^[\d.,½¼¾⅛⅜⅝⅞]$/;

const hasFirstEnd = ({ held }: Hand): boolean => held.tool === 'split' && held.state.kind === 'placing';

/**
 * The crosshair's way; but with something chosen and no crosshair there, what is chosen goes that way. While something is
 * taken up it is the crosshair that carries it.
 */
function arrow(toward: (typeof ARROWS)[keyof typeof ARROWS], fine: boolean): boolean {
  const hand = useHand.getState();
  const nudges = hand.held.tool === 'adjust' && hand.crosshair === null && !isBusy(hand);
  return (nudges && goNudge(toward, fine)) || goCrosshair({ kind: 'step', toward, fine });
}

function enter(adds: boolean): boolean {
  const hand = useHand.getState();
  if (hand.crosshair !== null) pressCrosshair(hand.crosshair, adds || hand.adds);
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
