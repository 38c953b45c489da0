import { ok, type Result } from '@seamwright/geometry';
import { type History, type Pattern, parsePattern, writePattern } from '@seamwright/pattern';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Work } from '../store/work.ts';
import { forgetHeld, type PicturesByKey, putBack, takeApart, textWhole } from './pictures-apart.ts';

/** A pattern as the browser keeps it: without its pictures, which it names by their keys. */
export interface KeptWork {
  readonly id: string;
  readonly title: string;
  readonly blocks: number;
  /** Milliseconds since 1970. */
  readonly changed: number;
  /** The document as a pattern file's text: read back, with its pictures, with the same care as any file. */
  readonly text: string;
  /** What can be undone and done again; left out of account when its format is no longer ours. */
  readonly steps: Pick<History<Pattern>, 'past' | 'future'> & { readonly format: string };
  readonly blockId: string;
  readonly station: Work['station'];
  /** The colourway in hand; the first versions kept none. */
  readonly colourwayId?: string | null;
  /** As it was kept, by this version or an earlier one: `keptPrinting` reads it. */
  readonly printing: unknown;
  /** True for a demo pattern in which nothing was changed. */
  readonly demo: boolean;
}

/** A kept pattern with its pictures. */
export interface FoundWork extends KeptWork {
  readonly pictures: PicturesByKey;
}

/** What the list of kept patterns shows. */
export type KeptTitle = Pick<KeptWork, 'id' | 'title' | 'blocks' | 'changed'>;

interface Shelf extends DBSchema {
  works: { key: string; value: KeptWork; indexes: { changed: number } };
  /** Pictures' data, under the work's id and the picture's own key. */
  pictures: { key: [work: string, picture: string]; value: string };
}

let shelf: Promise<IDBPDatabase<Shelf>> | null = null;

const open = (): Promise<IDBPDatabase<Shelf>> => {
  shelf ??= openShelf();
  return shelf;
};

function openShelf(): Promise<IDBPDatabase<Shelf>> {
  // Told late, it may be about one that another has taken the place of.
  const forget = () => {
    if (shelf === opening) shelf = null;
  };
  const opening = openDatabase(forget);
  opening.catch(forget);
  return opening;
}

// Where storage is switched off, some browsers throw at once: asynchronous, so that whoever waits for the shelf hears of it.
const openDatabase = async (forget: () => void): Promise<IDBPDatabase<Shelf>> =>
  openDB<Shelf>('seamwright', 2, {
    upgrade(database, before) {
      if (before < 1)
        database.createObjectStore('works', { keyPath: 'id' }).createIndex('changed', 'changed');
      database.createObjectStore('pictures');
    },
    // A later version in another tab needs the shelf for itself while it rebuilds it.
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      forget();
    },
    // The browser closed it, as when the site's data are cleared: what comes next goes to a new one.
    terminated: forget,
  });

/** Milliseconds that a page waits for the shelf: a tab with an earlier version may be in no hurry to let go of it. */
const PATIENCE = 3000;

/**
 * Opens the shelf before anything can be drawn: what is written to an open one stays, even if the page is left in the same
 * moment. Resolves after some patience all the same.
 */
export async function prepareShelf(): Promise<void> {
  const patience = new Promise<void>((resolve) => setTimeout(resolve, PATIENCE));
  // Whoever writes to it says what is wrong.
  await Promise.race([open().catch(() => undefined), patience]);
}

/**
 * Steps back that are kept between visits. While the program runs there is no limit; kept, each save writes them
 * all, on the page's thread. More would be felt after every edit of a large block: with 200 splits, 50 steps take some
 * 15 ms, 200 steps 60 to 130 ms.
 */
const KEPT_STEPS = 50;

export type Keepable = Pick<Work, 'kept' | 'history' | 'blockId' | 'station' | 'colourwayId' | 'printing'> & {
  readonly demo: boolean;
};

/** Writes a work to the shelf, whole. Rejects when the browser keeps nothing (no room, storage off). */
export async function keep(work: Keepable): Promise<void> {
  const known = shelf;
  try {
    if (await keepOnce(work)) return;
  } catch (error) {
    // The browser may have closed the shelf, and not have said so yet.
    if (known === null) throw error;
    if (shelf === known) shelf = null;
  }
  // Another tab deleted the work, pictures and all, or the browser all works: everything is written once more.
  forgetHeld(work.kept);
  await keepOnce(work);
}

/** False: pictures that were thought to be on the shelf are not. */
async function keepOnce({ kept, history, demo, ...place }: Keepable): Promise<boolean> {
  const pictures = takeApart(kept, {
    past: history.past.slice(-KEPT_STEPS),
    present: history.present,
    future: history.future.slice(0, KEPT_STEPS),
  });
  const { past, present: pattern, future } = pictures.history;
  const work: KeptWork = {
    id: kept,
    title: pattern.title,
    blocks: pattern.blocks.length,
    changed: Date.now(),
    text: writePattern(pattern),
    steps: { past, future, format: pattern.format },
    blockId: place.blockId,
    station: place.station,
    colourwayId: place.colourwayId,
    printing: place.printing,
    demo,
  };
  const writing = (await open()).transaction(['works', 'pictures'], 'readwrite', { durability: 'relaxed' });
  const store = writing.objectStore('pictures');
  const there = Promise.all(pictures.stay.map((key) => store.getKey([kept, key])));
  // Committed at once: a page that is going away does not live to see its transaction finish by itself.
  await Promise.all([
    writing.objectStore('works').put(work),
    ...pictures.fresh.map(([key, data]) => store.put(data, [kept, key])),
    ...pictures.gone.map((key) => store.delete([kept, key])),
    writing.done,
    writing.commit(),
  ]);
  pictures.done();
  return (await there).every((key) => key !== undefined);
}

export async function find(id: string): Promise<FoundWork | undefined> {
  const reading = (await open()).transaction(['works', 'pictures']);
  const store = reading.objectStore('pictures');
  const [work, keys, data] = await Promise.all([
    reading.objectStore('works').get(id),
    store.getAllKeys(ofWork(id)),
    store.getAll(ofWork(id)),
  ]);
  return work && { ...work, pictures: new Map(keys.map(([, key], i) => [key, data[i]!])) };
}

/** All keys that begin with the work's id: lists come after every text. */
const ofWork = (id: string): IDBKeyRange => IDBKeyRange.bound([id], [id, []]);

/** All kept works, the latest first, without their content. */
export async function titles(): Promise<readonly KeptTitle[]> {
  const works = await (await open()).getAllFromIndex('works', 'changed');
  return works.reverse().map(({ id, title, blocks, changed }) => ({ id, title, blocks, changed }));
}

/** The demo pattern that nobody has changed, if one is kept. */
export async function untouchedDemo(): Promise<FoundWork | undefined> {
  const demo = (await (await open()).getAll('works')).find((work) => work.demo);
  return demo && find(demo.id);
}

export async function discard(id: string): Promise<void> {
  const writing = (await open()).transaction(['works', 'pictures'], 'readwrite');
  await Promise.all([
    writing.objectStore('works').delete(id),
    writing.objectStore('pictures').delete(ofWork(id)),
    writing.done,
  ]);
  forgetHeld(id);
}

/** The history of a kept work. A document that cannot be read is a Problem, and stays on the shelf. */
export function revive(work: FoundWork): Result<History<Pattern>> {
  const parsed = parsePattern(textWhole(work.text, work.pictures));
  if (!parsed.ok) return parsed;
  const { pattern } = parsed.value;
  const same = work.steps.format === pattern.format;
  const { past, future } = same ? work.steps : { past: [], future: [] };
  return ok({ ...putBack(work.id, { past, present: pattern, future }, work.pictures), group: null });
}
