import { create } from 'zustand';
import { greyOf } from '../../colour/lightness.ts';

const asItIs = (colour: string): string => colour;

/** Whether the fabrics are looked at in greys: a habit of this visit, no part of the work. */
export const useGreys = create<{ readonly greys: boolean }>()(() => ({ greys: false }));

/** How a fabric's colour is shown at the moment. */
export const useShade = (): ((colour: string) => string) =>
  useGreys(({ greys }) => (greys ? greyOf : asItIs));
