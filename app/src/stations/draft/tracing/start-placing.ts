import { announce } from '../../../store/notices.ts';
import { focusDrawing } from '../crosshair.ts';
import { takeUp, useHand } from '../hand.ts';
import { takePicture } from './placing.ts';
import { placingWords } from './placing-words.ts';

/** Takes the picture in hand instead of the drawing; what was begun on the drawing is dropped. The drawing gets the keys. */
export function startPlacing(kind: 'moving' | 'pointing'): void {
  takeUp(useHand.getState().held.tool);
  useHand.setState({ crosshair: null });
  takePicture(kind);
  focusDrawing();
  announce(placingWords(kind, 0));
}
