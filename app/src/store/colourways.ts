import {
  type Colourway,
  exchangeFabrics,
  fabricsWorn,
  type Pattern,
  renameColourway as renamed,
  shuffledFabrics,
  addColourway as withColourway,
  removeColourway as withoutColourway,
} from '@seamwright/pattern';
import { changePattern, tellWithUndo } from './changes.ts';
import { fabricsOf } from './fabrics.ts';
import { announce } from './notices.ts';
import { currentColourway, pattern, useWork, type Work } from './work.ts';

const NONE: readonly Colourway[] = [];

/** The colourways by their lists; none for a pattern that has but one, which needs no name. */
export const listedColourways = (work: Work): readonly Colourway[] => pattern(work).colourways ?? NONE;

/** The one of the list that is in hand; undefined where nothing is listed. */
export const colourwayInHand = (work: Work): Colourway | undefined => {
  const key = currentColourway(work);
  const listed = listedColourways(work);
  return listed.find(({ id }) => id === key) ?? listed[0];
};

export function takeColourway({ id, name }: Colourway): void {
  useWork.setState({ colourwayId: id });
  announce(`${name} is in hand`);
}

const fresh = (name: string): Colourway => ({ id: `c-${crypto.randomUUID()}`, name });

/** A name that no colourway of the pattern has yet: `Colourway 3`. */
function freeName({ colourways = NONE }: Pattern): string {
  let number = Math.max(colourways.length, 1) + 1;
  while (colourways.some(({ name }) => name === `Colourway ${number}`)) number += 1;
  return `Colourway ${number}`;
}

/** A further colourway, like the one in hand at first; it is then in hand. */
export function addColourway(): void {
  const work = useWork.getState();
  const like = currentColourway(work);
  const added = fresh(freeName(pattern(work)));
  changePattern('Add a colourway', (before) => withColourway(before, added, like, fresh('Colourway 1')));
  useWork.setState({ colourwayId: added.id });
  announce(`${added.name} is in hand`);
}

export function renameColourway(id: string, name: string): void {
  changePattern('Rename a colourway', (before) => renamed(before, id, name));
}

/** Takes a colourway out of the pattern; the one before it, or else the next, is in hand afterwards. */
export function removeColourway({ id, name }: Colourway): void {
  const listed = listedColourways(useWork.getState());
  const at = listed.findIndex((one) => one.id === id);
  changePattern(`Remove ${name}`, (before) => withoutColourway(before, id));
  useWork.setState({ colourwayId: listed[at === 0 ? 1 : at - 1]?.id ?? null });
  tellWithUndo(`Removed the colourway “${name}”.`);
}

/** Each of two fabrics in the other's place, in the colourway that is in hand, on all blocks. */
export function swapFabrics(one: string, other: string): void {
  const names = [one, other].map(
    (id) => fabricsOf(useWork.getState()).find((fabric) => fabric.id === id)?.name,
  );
  exchange(
    `Swap ${names.join(' and ')}`,
    new Map([
      [one, other],
      [other, one],
    ]),
  );
}

/** Presses so far: each shuffles otherwise, and the same presses always alike. */
let presses = 0;

/** Every fabric that the colourway in hand has in another one's place, on all blocks. */
export function shuffleFabrics(): void {
  const work = useWork.getState();
  const worn = fabricsWorn(pattern(work), currentColourway(work));
  presses += 1;
  exchange('Shuffle the fabrics', shuffledFabrics(worn, presses));
}

function exchange(label: string, instead: ReadonlyMap<string, string>): void {
  const colourway = currentColourway(useWork.getState());
  changePattern(label, (before) => exchangeFabrics(before, colourway, instead));
  announce(label);
}
