import { createContext, useContext } from 'react';
import type { View } from './view.ts';

export const ViewContext = createContext<View>({ scale: 1, x: 0, y: 0 });

/** The canvas's view; what uses it is drawn again at every zoom and pan. */
export const useView = (): View => useContext(ViewContext);

export const ScaleContext = createContext(1);

/** CSS pixels per inch; what uses it is drawn again at every zoom, not at every pan. */
export const useScale = (): number => useContext(ScaleContext);
