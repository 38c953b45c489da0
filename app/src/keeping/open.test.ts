import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { changePattern } from '../store/changes.ts';
import { freshPattern } from '../store/fresh.ts';
import { useWork } from '../store/work.ts';
import { startAutosave } from './autosave.ts';
import { openPattern } from './open.ts';
import type { Keepable } from './shelf.ts';

/** A shelf and a lock that take their time: each write, and the taking, until it is told to be done. */
const slow = vi.hoisted(() => ({
  writes: [] as { work: Keepable; done: () => void }[],
  taken: () => {},
}));
vi.mock('./shelf.ts', () => ({
  prepareShelf: () => Promise.resolve(),
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
