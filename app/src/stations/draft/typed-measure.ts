import type { Measure } from '@seamwright/drafting';
import { fail, SNAP_DISTANCE, sentence } from '@seamwright/geometry';
import { announce } from '../../store/notices.ts';
import { focusDrawing } from './crosshair.ts';
import { isBusy, send, useHand } from './hand.ts';

/** By which the field for the length of the line that is being drawn is found: its `data-measure`. */
export const LENGTH_FIELD = 'length';

/** Goes on in the field for the length with what was typed on the drawing. False: the field is not on the screen. */
export function typeLength(first: string): boolean {
  const field = document.querySelector<HTMLInputElement>(`[data-measure="${LENGTH_FIELD}"]`);
  if (field === null) return false;
  field.focus();
  // As if it had been typed there: the field hears of it as of any other key.
  field.setRangeText(first, 0, field.value.length, 'end');
  field.dispatchEvent(new InputEvent('input', { bubbles: true, data: first, inputType: 'insertText' }));
  return true;
}

const UNKNOWN_WAY = fail('The line has a length but no way to go', '', 'Type its angle, or point the way');

/** Draws the line as it was typed: where the pointer or the crosshair leaves something open, that way. */
export function drawAsTyped(): void {
  const { held, measure, pointing, preview } = useHand.getState();
  if (held.tool !== 'split' || held.state.kind === 'idle' || isEmpty(measure)) return;
  if (preview.line === undefined && (measure.angle === undefined || measure.length === undefined)) {
    useHand.setState({ problem: UNKNOWN_WAY.problem });
    announce(sentence(UNKNOWN_WAY.problem));
    return;
  }
  const { at } = held.state.start;
  send({ type: 'press', ...(pointing ?? { at, reach: SNAP_DISTANCE, exact: true }) });
  // It lies where it was typed, not where was pointed: what was said of its end is done.
  if (!isBusy(useHand.getState())) send({ type: 'leave' });
  focusDrawing();
}

const isEmpty = ({ length, angle }: Measure): boolean => length === undefined && angle === undefined;
