import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { changePattern } from '../store/changes.ts';
import { freshPattern } from '../store/fresh.ts';
import { useWork } from '../store/work.ts';
import { flush, startAutosave } from './autosave.ts';
import { openPattern } from './open.ts';
import type { Keepable } from './shelf.ts';

/** A shelf and a lock that take their time: each write, and the taking, until it is told to be done. */
const slow = vi.hoisted(() => ({
  writes: [] as { work: Keepable; done: () => void }[],
  taken: () => {},
}));
vi.mock('./shelf.ts', () => ({
  keep: (work: Keepable) =>
    new Promise<void>((done) => {
      slow.writes.push({ work, done });
    }),
}));
vi.mock('./one-tab.ts', () => ({
  takeForThisTab: () =>
    new Promise<boolean>((resolve) => {
      slow.taken = () => resolve(true);
    }),
}));

beforeAll(() => {
  vi.stubGlobal('window', new EventTarget());
  startAutosave();
});
afterAll(() => vi.unstubAllGlobals());

/** Lets all go on that waits for nothing but its turn. */
const settled = () => new Promise((resolve) => setTimeout(resolve));
const titled = (title: string) => changePattern(`Name it ${title}`, (pattern) => ({ ...pattern, title }));
const written = () => slow.writes.map(({ work }) => work.history.present.title);

beforeEach(() => {
  slow.writes = [];
});

test('what is done while another work opens is kept before that is shown', async () => {
  const opening = openPattern({ ...freshPattern(), title: 'Lantern' }, 'work');
  await settled();
  titled('Boat');
  titled('Paper boat');
  slow.taken();
  await settled();
  expect(written()).toEqual(['Boat']);
  expect(useWork.getState().history.present.title).toBe('Paper boat');
  slow.writes[0]!.done();
  await settled();
  expect(written()).toEqual(['Boat', 'Paper boat']);
  slow.writes[1]!.done();
  await settled();
  expect(useWork.getState().history.present.title).toBe('Lantern');
  slow.writes[2]!.done();
  await opening;
  expect(written()).toEqual(['Boat', 'Paper boat', 'Lantern']);
});

test('what waits for a write to end is handed to the shelf before the page goes away', async () => {
  titled('Boat');
  titled('Paper boat');
  await settled();
  expect(written()).toEqual(['Boat']);
  window.dispatchEvent(new Event('pagehide'));
  expect(written()).toEqual(['Boat', 'Paper boat']);
  // The page is still there after all: it is sure of what it wrote itself only.
  slow.writes[0]!.done();
  await settled();
  expect(written()).toEqual(['Boat', 'Paper boat', 'Paper boat']);
  for (const { done } of slow.writes) done();
  await flush();
  window.dispatchEvent(new Event('pagehide'));
  expect(written()).toHaveLength(3);
});
