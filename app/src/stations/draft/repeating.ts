import { NO_SYMMETRY, type Symmetry, turnsAndAxes } from '@seamwright/drafting';
import { sentence } from '@seamwright/geometry';
import { announce } from '../../store/notices.ts';
import { adjustHand, currentSymmetry } from './hand.ts';

/** The angles of all axes, those that follow from the others included: degrees, 0 … 180 without 180. */
export function axesOf(symmetry: Symmetry): readonly number[] {
  const found = turnsAndAxes(symmetry);
  // To the ten-thousandth, which sums of thirds of a turn are nearer to.
  return found.ok
    ? found.value.axes.map((angle) => Math.round((((angle % 180) + 180) % 180) * 1e4) / 1e4)
    : [];
}

/** How often each line is drawn. */
export function timesOf(symmetry: Symmetry): number {
  const found = turnsAndAxes(symmetry);
  return found.ok ? found.value.turns + found.value.axes.length : 1;
}

export const repeatWords = (symmetry: Symmetry): string => {
  const times = timesOf(symmetry);
  return times === 1 ? 'Each line is drawn once' : `Each line is drawn ${times} times`;
};

export const isRepeated = (): boolean => timesOf(currentSymmetry()) > 1;

/** Repeats what is done from now on in this way; a sentence, where that is too much. */
export function repeat(symmetry: Symmetry): string | undefined {
  const found = turnsAndAxes(symmetry);
  if (!found.ok) return sentence(found.problem);
  adjustHand({ symmetry });
  announce(repeatWords(symmetry));
  return undefined;
}

export const drawOnce = (): void => void repeat(NO_SYMMETRY);
