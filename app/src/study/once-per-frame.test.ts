import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { oncePerFrame } from './once-per-frame.ts';

let waiting: (() => void)[] = [];

/** What the browser does before it paints. */
function frame(): void {
  const now = waiting;
  waiting = [];
  for (const callback of now) callback();
}

beforeEach(() => {
  waiting = [];
  vi.stubGlobal('requestAnimationFrame', (callback: () => void) => waiting.push(callback));
});
afterEach(() => void vi.unstubAllGlobals());

it('acts at once, once in each frame, and before it is painted for all that came after', () => {
  const act = vi.fn();
  const call = oncePerFrame(act);
  call();
  expect(act).toHaveBeenCalledTimes(1);
  call();
  call();
  expect(act).toHaveBeenCalledTimes(1);
  frame();
  expect(act).toHaveBeenCalledTimes(2);
  // That was the next frame's.
  call();
  expect(act).toHaveBeenCalledTimes(2);
  frame();
  expect(act).toHaveBeenCalledTimes(3);
  frame();
  expect(act).toHaveBeenCalledTimes(3);
  call();
  expect(act).toHaveBeenCalledTimes(4);
});
