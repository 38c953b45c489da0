import { type RefObject, useEffect } from 'react';

/** Scrolls a list so that what is current in it is seen: when it opens, and whenever `current` is another. */
export function useCurrentInSight(list: RefObject<HTMLElement | null>, current: unknown): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is current is looked for in the list
  useEffect(() => {
    // A popover is made before it is shown, and nothing can be scrolled in it until then.
    const frame = requestAnimationFrame(() => {
      list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
    });
    return () => cancelAnimationFrame(frame);
  }, [list, current]);
}
