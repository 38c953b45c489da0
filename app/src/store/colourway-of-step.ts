import { type Block, type ColourwayKey, fabricIn } from '@seamwright/pattern';
import { currentColourway, pattern, useWork, type Work } from './work.ts';

let follows = false;

/**
 * From now on, undo and redo take the colourway in hand in which they change fabrics, so that nobody undoes what is not to be
 * seen. Begun where colourways are first worked with: a first visit does not load it.
 */
export function followSteps(): void {
  if (follows) return;
  follows = true;
  useWork.subscribe((after, before) => {
    const { blocks, colourways } = pattern(after);
    if (blocks === pattern(before).blocks || colourways !== pattern(before).colourways) return;
    const { past, future } = before.history;
    // Documents that are gone back to share their blocks with what was kept; edits have new ones.
    if (![...past, ...future].some(({ document }) => document.blocks === blocks)) return;
    const colourwayId = repainted(before, after);
    if (colourwayId !== after.colourwayId) useWork.setState({ colourwayId });
  });
}

/** The colourway in hand, or another one where only that has other fabrics now. */
function repainted(before: Work, after: Work): string | null {
  const { colourways = [] } = pattern(after);
  const changes = (key: ColourwayKey) =>
    worn(pattern(before).blocks, key) !== worn(pattern(after).blocks, key);
  if (changes(currentColourway(after))) return after.colourwayId;
  const changed = [null, ...colourways.slice(1).map(({ id }) => id)].find(changes);
  return changed === undefined ? after.colourwayId : changed;
}

const worn = (blocks: readonly Block[], key: ColourwayKey): string =>
  blocks.flatMap(({ patches }) => patches.map((patch) => `${patch.id} ${fabricIn(patch, key) ?? ''}`)).join();
