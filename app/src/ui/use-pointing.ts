import { useEffect, useMemo, useRef } from 'react';
import { type Pointed, usePointed } from '../store/pointed.ts';

/** To be put on what stands for a place on the canvas. */
export interface PointingHandlers {
  readonly onPointerEnter: () => void;
  readonly onPointerLeave: () => void;
  readonly onFocus: () => void;
  readonly onBlur: () => void;
}

/**
 * Shows `what` on the canvases while the element has the focus, or the pointer over it. A function is asked when that
 * begins: for what takes working out.
 */
export function usePointing(what: Pointed | (() => Pointed)): PointingHandlers {
  const latest = useRef(what);
  const mine = useRef<{ hovered: Pointed | null; focused: Pointed | null }>({ hovered: null, focused: null });
  latest.current = what;
  const handlers = useMemo(() => {
    const show = (slot: 'hovered' | 'focused') => {
      const shown = typeof latest.current === 'function' ? latest.current() : latest.current;
      mine.current[slot] = shown;
      usePointed.setState({ [slot]: shown });
    };
    const hide = (slot: 'hovered' | 'focused') => {
      // The next one may have taken its place already.
      if (usePointed.getState()[slot] === mine.current[slot]) usePointed.setState({ [slot]: null });
      mine.current[slot] = null;
    };
    return { show, hide };
  }, []);
  // What is pointed at may have become another while it is.
  useEffect(() => {
    for (const slot of ['hovered', 'focused'] as const)
      if (mine.current[slot] !== null && usePointed.getState()[slot] === mine.current[slot])
        handlers.show(slot);
  });
  // What is taken off the screen is pointed at by nobody, though no event says so.
  useEffect(
    () => () => {
      handlers.hide('hovered');
      handlers.hide('focused');
    },
    [handlers],
  );
  return useMemo(
    () => ({
      onPointerEnter: () => handlers.show('hovered'),
      onPointerLeave: () => handlers.hide('hovered'),
      onFocus: () => handlers.show('focused'),
      onBlur: () => handlers.hide('focused'),
    }),
    [handlers],
  );
}
