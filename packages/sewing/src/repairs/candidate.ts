import type { Drawing, Message } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';

/** What a repair does to the drawing. */
export type RepairKind = 'extend' | 'slide' | 'merge' | 'line-up' | 'trim' | 'reach';

/** A change that may be a repair; whether it is one shows when the changed drawing is solved. */
export interface Candidate {
  readonly kind: RepairKind;
  readonly message: Message;
  readonly drawing: Drawing;
  readonly splits: readonly (readonly [Point, Point])[];
  /** What it will cost, as far as that can be told without solving: which candidates are tried first. */
  readonly patches: number;
  readonly seamLength: number;
  /** Whether something goes that the maker drew: a line or a stretch of it, and with it a patch. */
  readonly takesAway: boolean;
}
