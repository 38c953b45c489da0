import type { Point } from '@seamwright/geometry';
import { type RefObject, useEffect, useRef } from 'react';
import { type CanvasPointer, reachOf } from './pointer.ts';
import { pan, toBlock, type View, zoomAt } from './view.ts';

/** What the gestures need of the canvas; read at every event, so it may change freely. */
export interface GestureTarget {
  readonly view: View;
  readonly fitting: View;
  /** `tool`: one finger or the main button goes to `onPointer`. `pan`: it moves the view, and taps go to `onPointer`. */
  readonly drag: 'tool' | 'pan';
  /** Goes on from the view that there is then: several events may come before one of them is shown. */
  readonly changeView: (change: (view: View) => View) => void;
  readonly onPointer: ((event: CanvasPointer) => void) | undefined;
}

/** CSS pixels: a press that moves less than this is a tap. */
const TAP = 5;

/** What one wheel step does: the factor grows with the distance the wheel reports. */
const wheelFactor = (event: WheelEvent): number => {
  const pixels = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 16 : event.deltaY;
  // A pinch on a trackpad comes as a control wheel with small steps.
  return 2 ** (-pixels / (event.ctrlKey ? 100 : 400));
};

type Going =
  | { readonly kind: 'tool'; readonly id: number }
  | {
      readonly kind: 'pan';
      readonly id: number;
      readonly from: Point<'screen'>;
      moved: boolean;
      readonly tap: boolean;
    }
  | { readonly kind: 'pinch' };

/**
 * Turns the pointers, the wheel and the space bar over `ref` into pans, zooms and `onPointer` events. Two fingers
 * pinch and move; the middle button, or the space bar held down, moves; the wheel zooms about the pointer.
 */
export function useGestures(ref: RefObject<HTMLElement | null>, target: GestureTarget): void {
  const latest = useRef(target);
  latest.current = target;

  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const fingers = new Map<number, Point<'screen'>>();
    let going: Going | null = null;
    let space = false;

    const place = (event: { clientX: number; clientY: number }): Point<'screen'> => {
      const box = element.getBoundingClientRect();
      return { x: event.clientX - box.left, y: event.clientY - box.top };
    };
    const send = (kind: CanvasPointer['kind'], event: PointerEvent) => {
      const { view, onPointer } = latest.current;
      const screen = place(event);
      onPointer?.({
        kind,
        screen,
        at: toBlock(view, screen),
        reach: reachOf(event.pointerType) / view.scale,
        touch: event.pointerType === 'touch',
        shift: event.shiftKey,
        alt: event.altKey,
        mod: event.ctrlKey || event.metaKey,
      });
    };

    const down = (event: PointerEvent) => {
      if ((event.target as Element).closest('button, input, a') !== null) return;
      if (event.pointerType === 'touch') fingers.set(event.pointerId, place(event));
      if (fingers.size === 2) {
        if (going?.kind === 'tool') send('cancel', event);
        going = { kind: 'pinch' };
        return;
      }
      if (going !== null || event.button > 1) return;
      element.setPointerCapture(event.pointerId);
      const moves = event.button === 1 || space;
      if (moves || latest.current.drag === 'pan') {
        going = { kind: 'pan', id: event.pointerId, from: place(event), moved: false, tap: !moves };
        if (event.button === 1) event.preventDefault();
      } else {
        going = { kind: 'tool', id: event.pointerId };
        send('down', event);
      }
    };

    const pinch = (event: PointerEvent) => {
      const before = [...fingers.values()];
      fingers.set(event.pointerId, place(event));
      const after = [...fingers.values()];
      if (before.length !== 2) return;
      const middle = ([a, b]: Point<'screen'>[]) => ({ x: (a!.x + b!.x) / 2, y: (a!.y + b!.y) / 2 });
      const apart = ([a, b]: Point<'screen'>[]) => Math.max(Math.hypot(a!.x - b!.x, a!.y - b!.y), 1);
      const { fitting, changeView } = latest.current;
      const [m0, m1] = [middle(before), middle(after)];
      const factor = apart(after) / apart(before);
      changeView((view) => zoomAt(pan(view, m1.x - m0.x, m1.y - m0.y), m1, factor, fitting));
    };

    const move = (event: PointerEvent) => {
      if (going?.kind === 'pinch') {
        if (fingers.has(event.pointerId)) pinch(event);
        return;
      }
      // Where a second one finds it.
      if (fingers.has(event.pointerId)) fingers.set(event.pointerId, place(event));
      if (going?.kind === 'pan' && going.id === event.pointerId) {
        const at = place(event);
        if (!going.moved && Math.hypot(at.x - going.from.x, at.y - going.from.y) < TAP) return;
        const [dx, dy] = [at.x - going.from.x, at.y - going.from.y];
        latest.current.changeView((view) => pan(view, dx, dy));
        going = { ...going, from: at, moved: true };
        return;
      }
      if (going === null || (going.kind === 'tool' && going.id === event.pointerId)) send('move', event);
    };

    const finish = (kind: 'up' | 'cancel') => (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      if (going?.kind === 'pinch') {
        // The finger that stays does nothing until it, too, is lifted.
        if (fingers.size === 0) going = null;
        return;
      }
      if (going === null || going.id !== event.pointerId) return;
      const ended = going;
      going = null;
      if (ended.kind === 'tool') send(kind, event);
      else if (ended.tap && !ended.moved && kind === 'up') {
        send('down', event);
        send('up', event);
      }
    };
    const up = finish('up');
    const cancel = finish('cancel');
    const leave = (event: PointerEvent) => {
      if (going === null) send('leave', event);
    };

    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      const { fitting, changeView } = latest.current;
      const [at, factor] = [place(event), wheelFactor(event)];
      if (event.shiftKey) changeView((view) => pan(view, -(event.deltaX || event.deltaY), 0));
      else if (Math.abs(event.deltaX) > Math.abs(event.deltaY))
        changeView((view) => pan(view, -event.deltaX, 0));
      else changeView((view) => zoomAt(view, at, factor, fitting));
    };

    const keyDown = (event: KeyboardEvent) => {
      if (event.key !== ' ' || !element.contains(document.activeElement)) return;
      space = true;
      // Otherwise it scrolls the page, too.
      event.preventDefault();
    };
    const keyUp = (event: KeyboardEvent) => {
      if (event.key === ' ') space = false;
    };
    // Another window has the keyboard: who lifts the key there is not heard here.
    const blur = () => {
      space = false;
    };

    element.addEventListener('pointerdown', down);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', up);
    element.addEventListener('pointercancel', cancel);
    element.addEventListener('pointerleave', leave);
    element.addEventListener('wheel', wheel, { passive: false });
    window.addEventListener('keydown', keyDown);
    window.addEventListener('keyup', keyUp);
    window.addEventListener('blur', blur);
    return () => {
      element.removeEventListener('pointerdown', down);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', up);
      element.removeEventListener('pointercancel', cancel);
      element.removeEventListener('pointerleave', leave);
      element.removeEventListener('wheel', wheel);
      window.removeEventListener('keydown', keyDown);
      window.removeEventListener('keyup', keyUp);
      window.removeEventListener('blur', blur);
    };
  }, [ref]);
}
