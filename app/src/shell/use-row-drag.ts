import { type PointerEvent, type RefObject, useState } from 'react';

/** The row that is being dragged: from where, and to which place it would come now. */
export interface Dragged {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** Lets the rows of a list be dragged by a grip; `move` is told once, when the row is let go. */
export function useRowDrag(
  list: RefObject<HTMLElement | null>,
  move: (id: string, to: number) => void,
): {
  readonly dragged: Dragged | null;
  readonly grip: (id: string, at: number) => Readonly<Record<string, (event: PointerEvent) => void>>;
} {
  const [dragged, setDragged] = useState<Dragged | null>(null);
  const placeOf = (y: number): number => {
    const rows = [...(list.current?.children ?? [])].map((row) => row.getBoundingClientRect());
    const at = rows.findIndex(({ bottom }) => y < bottom);
    return at < 0 ? rows.length - 1 : at;
  };
  const grip = (id: string, from: number) => ({
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      setDragged({ id, from, to: from });
    },
    onPointerMove: (event: PointerEvent) => {
      if (dragged?.id !== id) return;
      const rows = list.current;
      if (rows !== null) scrollTowards(rows, event.clientY);
      setDragged({ id, from, to: placeOf(event.clientY) });
    },
    onPointerUp: (event: PointerEvent) => {
      // Where it is let go: the last move may not have been shown yet.
      if (dragged?.id === id) move(id, placeOf(event.clientY));
      setDragged(null);
    },
    onPointerCancel: () => setDragged(null),
  });
  return { dragged, grip };
}

/** CSS pixels: nearer than this to the list's end, it scrolls. */
const EDGE = 28;

function scrollTowards(list: HTMLElement, y: number): void {
  const { top, bottom } = list.getBoundingClientRect();
  if (y < top + EDGE) list.scrollTop -= EDGE / 2;
  if (y > bottom - EDGE) list.scrollTop += EDGE / 2;
}
