import {
  type Block,
  cutFrom,
  type Fabric,
  type Pattern,
  PLAIN_FABRICS,
  removeFabric as withoutFabric,
} from '@seamwright/pattern';
import { changeBlock, changePattern, tellWithUndo } from './changes.ts';
import { announce } from './notices.ts';
import { currentBlock, currentColourway, pattern, useWork, type Work } from './work.ts';

const NONE: readonly Fabric[] = [];

export const fabricsOf = (work: Work): readonly Fabric[] => pattern(work).fabrics ?? NONE;

/**
 * Cuts patches of the open block from a fabric, in the colourway that is in hand; null: from none that is chosen.
 *
 * @param stroke paints with the same key that follow one another are one step: a drag over several patches
 */
export function paintPatches(
  patches: readonly string[],
  fabric: Fabric | null,
  stroke: string | null = null,
): void {
  const label = fabric === null ? 'Take the fabric off' : `Cut from ${fabric.name}`;
  const colourway = currentColourway(useWork.getState());
  const paint = (block: Block) => {
    const painted = block.patches.map((record) =>
      patches.includes(record.id) ? cutFrom(record, colourway, fabric?.id ?? null) : record,
    );
    return painted.every((record, i) => record === block.patches[i]) ? block : { ...block, patches: painted };
  };
  changeBlock(label, currentBlock(useWork.getState()).id, paint, stroke);
  announce(label);
}

export function addFabric(name: string, colour: string): void {
  const fabric = { id: `f-${crypto.randomUUID()}`, name, colour };
  changePattern(`Add fabric ${name}`, (before) => withFabrics(before, [...(before.fabrics ?? NONE), fabric]));
  announce(`${name} is a fabric of the pattern`);
}

/** The fabrics that a new pattern begins with, for one that has none. */
export function addPlainFabrics(): void {
  changePattern('Add plain fabrics', (before) => withFabrics(before, PLAIN_FABRICS));
  announce(`${PLAIN_FABRICS.length} fabrics added`);
}

export function renameFabric(id: string, name: string): void {
  changeFabric('Rename a fabric', id, (fabric) => (fabric.name === name ? fabric : { ...fabric, name }));
}

/** Colours that are chosen one after the other in one go are one step. */
export function recolourFabric(id: string, colour: string): void {
  changeFabric(
    'Change the colour of a fabric',
    id,
    (fabric) => (fabric.colour === colour ? fabric : { ...fabric, colour }),
    `colour ${id}`,
  );
}

/** Takes a fabric out of the pattern, and off the patches of all blocks in all colourways. */
export function removeFabric({ id, name }: Fabric): void {
  const before = useWork.getState();
  changePattern(`Remove fabric ${name}`, (whole) => withoutFabric(whole, id));
  tellWithUndo(`Removed the fabric “${name}”. ${bareText(before, useWork.getState())}`);
}

/** How many patches have no fabric any more, and how many of them are out of sight. */
function bareText(before: Work, after: Work): string {
  const open = currentBlock(before).id;
  const bare = pattern(before).blocks.flatMap((block, i) =>
    block.patches.filter((record, k) => record !== pattern(after).blocks[i]!.patches[k]).map(() => block.id),
  );
  if (bare.length === 0) return 'No patch was cut from it.';
  const all = bare.length === 1 ? '1 patch has none now' : `${bare.length} patches have none now`;
  const elsewhere = bare.filter((id) => id !== open).length;
  if (elsewhere === 0) return `${all}.`;
  return `${all}, ${elsewhere === bare.length ? '' : `${elsewhere} of them `}in other blocks.`;
}

export function changeFabric(
  label: string,
  id: string,
  edit: (fabric: Fabric) => Fabric,
  group: string | null = null,
): void {
  changePattern(
    label,
    (before) => {
      const fabrics = before.fabrics ?? NONE;
      const edited = fabrics.map((fabric) => (fabric.id === id ? edit(fabric) : fabric));
      return edited.every((fabric, i) => fabric === fabrics[i]) ? before : withFabrics(before, edited);
    },
    group,
  );
}

const withFabrics = (before: Pattern, fabrics: readonly Fabric[]): Pattern => ({ ...before, fabrics });
