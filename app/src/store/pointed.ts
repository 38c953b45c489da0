import type { Drawing } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import { create } from 'zustand';

/** What a list beside the canvas is at, so that the canvases show where it is. */
export interface Pointed {
  /** The drawing that it is about: on any other, it is not shown. */
  readonly of: Drawing;
  /** Patches by index. */
  readonly patches?: readonly number[];
  /** Seams that are meant. */
  readonly seams?: readonly Segment[];
  /** Lines that would be added. */
  readonly added?: readonly Segment[];
  /** Lines that would be taken away. */
  readonly removed?: readonly Segment[];
  /** A finding by its place in the study's list. */
  readonly finding?: number;
}

interface Pointing {
  /** Under the pointer. */
  readonly hovered: Pointed | null;
  /** With the keyboard's focus. */
  readonly focused: Pointed | null;
}

/** Apart from the work: it changes at every move of the pointer, and nobody undoes it. */
export const usePointed = create<Pointing>()(() => ({ hovered: null, focused: null }));

/** What is shown of the two: the pointer's, which is the livelier. */
export const pointedNow = ({ hovered, focused }: Pointing): Pointed | null => hovered ?? focused;
