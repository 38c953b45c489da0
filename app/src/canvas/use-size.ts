import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './view.ts';

/** The element's size in CSS pixels, kept up to date; null before it is known or while it has none. */
export function useSize(ref: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const measure = () => {
      const width = Math.floor(element.clientWidth);
      const height = Math.floor(element.clientHeight);
      setSize((before) => {
        if (width === 0 || height === 0) return before;
        return before?.width === width && before.height === height ? before : { width, height };
      });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return size;
}
