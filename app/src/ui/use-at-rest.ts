import { useEffect, useState } from 'react';

/** How many mouse buttons, pens and fingers are down. */
const down = new Set<number>();
const lift = ({ pointerId }: PointerEvent) => down.delete(pointerId);
window.addEventListener('pointerdown', ({ pointerId }) => down.add(pointerId), { capture: true });
window.addEventListener('pointerup', lift, { capture: true });
window.addEventListener('pointercancel', lift, { capture: true });

/**
 * The value as it was before the press that is under way; after it, as it is. For what pushes other things about when it
 * comes or goes: a press that leaves a field, and so changes something, still meets what it was aimed at.
 */
export function useAtRest<Value>(value: Value): Value {
  const [atRest, setAtRest] = useState(value);
  useEffect(() => {
    if (down.size === 0) {
      setAtRest(value);
      return;
    }
    // The click comes with the release, before the next task; it may bring another value.
    let timer: ReturnType<typeof setTimeout> | undefined;
    const settle = () => {
      timer = setTimeout(() => setAtRest(value));
    };
    const done = new AbortController();
    for (const end of ['pointerup', 'pointercancel'])
      window.addEventListener(end, settle, { once: true, signal: done.signal });
    return () => {
      done.abort();
      clearTimeout(timer);
    };
  }, [value]);
  return atRest;
}
