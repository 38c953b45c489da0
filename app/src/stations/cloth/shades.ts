import { create } from 'zustand';
import { asItIs } from '../../canvas/fabric-fills.ts';
import { greyOf } from '../../colour/lightness.ts';

/** Whether the fabrics are looked at in greys: a habit of this visit, no part of the work. */
export const useGreys = create<{ readonly greys: boolean }>()(() => ({ greys: false }));

/** How a fabric's colour is shown at the moment. */
export const useShade = (): ((colour: string) => string) =>
  useGreys(({ greys }) => (greys ? greyOf : asItIs));
