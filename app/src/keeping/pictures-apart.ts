import {
  type Block,
  type Fabric,
  type History,
  type Pattern,
  type Picture,
  picturesOf,
  withPictures,
} from '@seamwright/pattern';

/**
 * Pictures are the heaviest thing in a pattern, and every change writes the whole work to the shelf, steps and all. So the
 * shelf holds each picture of a work once, apart, and documents name them by keys.
 */

/** By key, the data of the pictures of one work. */
export type PicturesByKey = ReadonlyMap<string, string>;

/** What this tab knows of a work whose pictures it keeps. */
interface Known {
  readonly keys: WeakMap<Picture, string>;
  /** Pictures that the shelf holds, as far as this tab knows. */
  readonly held: Set<string>;
  /** What was taken apart before: documents share blocks and fabrics, and go on sharing them on the shelf. */
  readonly holders: WeakMap<Block | Fabric, Block | Fabric>;
  readonly apart: WeakMap<Picture, Picture>;
}

const works = new Map<string, Known>();

function knownOf(work: string): Known {
  let known = works.get(work);
  if (known === undefined) {
    known = { keys: new WeakMap(), held: new Set(), holders: new WeakMap(), apart: new WeakMap() };
    works.set(work, known);
  }
  return known;
}

/** A work with its pictures taken out, and what is to be done with them. */
export interface Apart {
  readonly history: Pick<History<Pattern>, 'past' | 'present' | 'future'>;
  /** To be written: key and data. */
  readonly fresh: readonly (readonly [key: string, data: string])[];
  /** Used, and held already. */
  readonly stay: readonly string[];
  /** Held, and used by no step any more. */
  readonly gone: readonly string[];
  /** To be called when all of that is done. */
  readonly done: () => void;
}

/** Takes the pictures out of all documents of a history. */
export function takeApart(work: string, history: Apart['history']): Apart {
  const known = knownOf(work);
  const documents = [
    history.present,
    ...[...history.past, ...history.future].map(({ document }) => document),
  ];
  const used = new Map<string, Picture>();
  for (const document of documents)
    for (const picture of picturesOf(document)) used.set(keyOf(known, picture), picture);
  const apart = (document: Pattern): Pattern =>
    withPictures(document, (picture) => pictureApart(known, picture), known.holders);
  const step = (one: History<Pattern>['past'][number]) => ({ ...one, document: apart(one.document) });
  return {
    history: {
      past: history.past.map(step),
      present: apart(history.present),
      future: history.future.map(step),
    },
    fresh: [...used].flatMap(([key, { data }]) => (known.held.has(key) ? [] : [[key, data] as const])),
    stay: [...used.keys()].filter((key) => known.held.has(key)),
    gone: [...known.held].filter((key) => !used.has(key)),
    done: () => {
      known.held.clear();
      for (const key of used.keys()) known.held.add(key);
    },
  };
}

function keyOf({ keys }: Known, picture: Picture): string {
  let key = keys.get(picture);
  if (key === undefined) {
    key = crypto.randomUUID();
    keys.set(picture, key);
  }
  return key;
}

function pictureApart(known: Known, picture: Picture): Picture {
  let apart = known.apart.get(picture);
  if (apart === undefined) {
    apart = { ...picture, data: keyOf(known, picture) };
    known.apart.set(picture, apart);
  }
  return apart;
}

/** Forgets what the shelf holds of a work: it was deleted, or someone else may have. All is written again. */
export function forgetHeld(work: string): void {
  works.delete(work);
}

/** The text of a pattern file with its pictures put back. */
export function textWhole(text: string, pictures: PicturesByKey): string {
  let whole = text;
  // A key in quotes is nowhere else: quotes inside texts are written with a stroke before them.
  for (const [key, data] of pictures) whole = whole.replaceAll(`"${key}"`, () => JSON.stringify(data));
  return whole;
}

/**
 * The documents with their pictures put back. All of them, `present` too, then share one object for each picture, and this
 * tab knows that the shelf holds it.
 */
export function putBack(
  work: string,
  { past, present, future }: Apart['history'],
  pictures: PicturesByKey,
): Apart['history'] {
  const known = knownOf(work);
  const whole = new Map<string, Picture>();
  const byData = new Map([...pictures].map(([key, data]) => [data, key]));
  const holders = new WeakMap<Block | Fabric, Block | Fabric>();
  const pictureOf = (picture: Picture): Picture => {
    const key = byData.get(picture.data) ?? picture.data;
    const data = pictures.get(key);
    if (data === undefined) return picture;
    // The same picture may have come in under two names.
    const id = `${key} ${picture.name}`;
    let one = whole.get(id);
    if (one === undefined) {
      one = { ...picture, data };
      whole.set(id, one);
      known.keys.set(one, key);
      known.held.add(key);
    }
    return one;
  };
  const document = (pattern: Pattern): Pattern => withPictures(pattern, pictureOf, holders);
  const step = (one: History<Pattern>['past'][number]) => ({ ...one, document: document(one.document) });
  return { past: past.map(step), present: document(present), future: future.map(step) };
}
