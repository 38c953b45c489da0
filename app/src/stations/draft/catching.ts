import type { SnapKind } from '@seamwright/drafting';
import { type Settings, setting, useSettings } from '../../store/settings.ts';
import { lookAgain } from './hand.ts';

/** Whether a kind of place is caught, asked now. */
export const isCaught = (kind: SnapKind): boolean => !useSettings.getState().notCaught.includes(kind);

/** Whether the grid is caught, and therefore shown. */
export const keepsToGrid = ({ notCaught }: Settings): boolean => !notCaught.includes('grid');

/** Lets a kind of place catch, or not. */
export function catchKind(kind: SnapKind, on: boolean): void {
  const others = useSettings.getState().notCaught.filter((one) => one !== kind);
  setting({ notCaught: on ? others : [...others, kind] });
  lookAgain();
}

/** Lets ends that were put on nothing stay there, or run on. */
export function holdEnds(held: boolean): void {
  setting({ ends: held ? 'held' : 'run' });
  lookAgain();
}
