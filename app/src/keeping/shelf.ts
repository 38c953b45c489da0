import { ok, type Result } from '@seamwright/geometry';
import { type History, type Pattern, parsePattern, writePattern } from '@seamwright/pattern';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Work } from '../store/work.ts';

/** A pattern as the browser keeps it. */
export interface KeptWork {
  readonly id: string;
  readonly title: string;
  readonly blocks: number;
  /** Milliseconds since 1970. */
  readonly changed: number;
  /** The document as a pattern file's text: read back with the same care as any file. */
  readonly text: string;
  /** What can be undone and done again; left out of account when its format is no longer ours. */
  readonly steps: Pick<History<Pattern>, 'past' | 'future'> & { readonly format: string };
  readonly blockId: string;
  readonly station: Work['station'];
  readonly printing: Work['printing'];
  /** True for a demo pattern in which nothing was changed. */
  readonly demo: boolean;
}

/** What the list of kept patterns shows. */
export type KeptTitle = Pick<KeptWork, 'id' | 'title' | 'blocks' | 'changed'>;

interface Shelf extends DBSchema {
  works: { key: string; value: KeptWork; indexes: { changed: number } };
}

let shelf: Promise<IDBPDatabase<Shelf>> | null = null;

const open = (): Promise<IDBPDatabase<Shelf>> => {
  shelf ??= openDB<Shelf>('seamwright', 1, {
    upgrade(database) {
      database.createObjectStore('works', { keyPath: 'id' }).createIndex('changed', 'changed');
    },
  });
  return shelf;
};

/** Opens the shelf before it is needed, so that the first change is not kept later than the others. */
export async function prepareShelf(): Promise<void> {
  try {
    await open();
  } catch {
    // Whoever writes to it says so.
  }
}

/**
 * Steps back that are kept between visits. While the program runs there is no limit; kept, each save writes them
 * all, on the page's thread. More would be felt after every edit of a large block: with 200 splits, 50 steps take some
 * 15 ms, 200 steps 60 to 130 ms.
 */
const KEPT_STEPS = 50;

export type Keepable = Pick<Work, 'kept' | 'history' | 'blockId' | 'station' | 'printing'> & {
  readonly demo: boolean;
};

/** Writes a work to the shelf, whole. Rejects when the browser keeps nothing (no room, storage off). */
export async function keep({ kept, history, demo, ...place }: Keepable): Promise<void> {
  const pattern = history.present;
  const work: KeptWork = {
    id: kept,
    title: pattern.title,
    blocks: pattern.blocks.length,
    changed: Date.now(),
    text: writePattern(pattern),
    steps: {
      past: history.past.slice(-KEPT_STEPS),
      future: history.future.slice(0, KEPT_STEPS),
      format: pattern.format,
    },
    blockId: place.blockId,
    station: place.station,
    printing: place.printing,
    demo,
  };
  const writing = (await open()).transaction('works', 'readwrite', { durability: 'relaxed' });
  // Committed at once: a page that is going away does not live to see its transaction finish by itself.
  await Promise.all([writing.store.put(work), writing.done, writing.commit()]);
}

export const find = async (id: string): Promise<KeptWork | undefined> => (await open()).get('works', id);

/** All kept works, the latest first, without their content. */
export async function titles(): Promise<readonly KeptTitle[]> {
  const works = await (await open()).getAllFromIndex('works', 'changed');
  return works.reverse().map(({ id, title, blocks, changed }) => ({ id, title, blocks, changed }));
}

/** The demo pattern that nobody has changed, if one is kept. */
export async function untouchedDemo(): Promise<KeptWork | undefined> {
  return (await (await open()).getAll('works')).find((work) => work.demo);
}

export async function discard(id: string): Promise<void> {
  await (await open()).delete('works', id);
}

/** The history of a kept work. A document that cannot be read is a Problem, and stays on the shelf. */
export function revive(work: KeptWork): Result<History<Pattern>> {
  const parsed = parsePattern(work.text);
  if (!parsed.ok) return parsed;
  const { pattern } = parsed.value;
  const same = work.steps.format === pattern.format;
  return ok({
    past: same ? work.steps.past : [],
    present: pattern,
    future: same ? work.steps.future : [],
    group: null,
  });
}
