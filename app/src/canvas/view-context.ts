import { createContext, useContext } from 'react';
import type { Flip, View } from './view.ts';

export const ViewContext = createContext<View>({ scale: 1, x: 0, y: 0, flip: 1 });

/** The canvas's view; what uses it is drawn again at every zoom and pan. */
export const useView = (): View => useContext(ViewContext);

export const ScaleContext = createContext(1);

/** CSS pixels per inch; what uses it is drawn again at every zoom, not at every pan. */
export const useScale = (): number => useContext(ScaleContext);

export const FlipContext = createContext<Flip>(1);

/** -1 where the block is seen from its printed side: what has to be read multiplies its `scaleX` by it. */
export const useFlip = (): Flip => useContext(FlipContext);
