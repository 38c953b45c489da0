import type { Point } from '@seamwright/geometry';
import type { Tracing } from '@seamwright/pattern';
import { create } from 'zustand';

/** What the hand does with the picture: nothing, move it, or point at two places of it. */
export type PlacingKind = 'rest' | 'moving' | 'pointing';

export interface Placing {
  readonly kind: PlacingKind;
  /** Places of the picture that were pointed at, at most two: they stay on it while it is moved, turned and scaled. */
  readonly points: readonly Point<'picture'>[];
  /** Where a press under way would point; null when there is none. */
  readonly under: Point | null;
  /** The keyboard's pointer; null while a mouse or finger is used. */
  readonly crosshair: Point | null;
  /** The points were pressed, and how far they are apart is what is asked next: the field for it takes the focus. */
  readonly asks: boolean;
  /** The picture as it would lie: shown, but not yet in the document. */
  readonly preview: Tracing | null;
}

const REST: Placing = { kind: 'rest', points: [], under: null, crosshair: null, asks: false, preview: null };

/** The maker's hand on the picture at the Draft station. Not part of the document. */
export const usePlacing = create<Placing>()(() => REST);

/** Leaves the picture where it is: what the hand does next, it does to the drawing. */
export function stopPlacing(): void {
  if (usePlacing.getState().kind !== 'rest') usePlacing.setState(REST);
}

/** Takes the picture in hand. Points that are there stay. */
export function takePicture(kind: 'moving' | 'pointing'): void {
  usePlacing.setState({ kind, under: null, crosshair: null, preview: null });
}

/** Shows the picture as it would lie; null: as it lies. */
export function previewPlacing(preview: Tracing | null): void {
  if (usePlacing.getState().preview !== preview) usePlacing.setState({ preview });
}
