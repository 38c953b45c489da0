import type { Drawing } from '@seamwright/arrangement';
import type { Block } from '@seamwright/pattern';
import { changeBlock, changePattern } from './changes.ts';
import { freshBlock, newBlockId } from './fresh.ts';
import { openBlock } from './places.ts';
import { currentBlock, pattern, useWork } from './work.ts';

/** Adds a block after the open one, and opens it. */
function addBlock(label: string, block: Block): void {
  const open = currentBlock(useWork.getState());
  changePattern(label, (before) => {
    const at = before.blocks.indexOf(open) + 1;
    return { ...before, blocks: [...before.blocks.slice(0, at), block, ...before.blocks.slice(at)] };
  });
  openBlock(block.id);
}

/** A name that no block of the pattern has yet: `Block 4`. */
function freeName(): string {
  const { blocks } = pattern(useWork.getState());
  let number = blocks.length + 1;
  while (blocks.some((block) => block.name === `Block ${number}`)) number += 1;
  return `Block ${number}`;
}

export const newBlock = (): void => addBlock('New block', freshBlock(freeName()));

export function duplicateBlock(): void {
  const open = currentBlock(useWork.getState());
  addBlock('Copy block', { ...open, id: newBlockId(), name: `${open.name}, copy` });
}

/** Adds a drawing from elsewhere as a block; it takes the place of a block in which nothing was drawn yet. */
export function addDrawing(name: string, drawing: Drawing): void {
  const work = useWork.getState();
  const label = `Bring in “${name}”`;
  const untouched = work.origin === 'fresh' && work.history.past.length === 0;
  if (!untouched) {
    addBlock(label, { ...freshBlock(name), drawing });
    return;
  }
  changeBlock(label, currentBlock(work).id, (block) => ({ ...block, name, drawing }));
}

export function renameBlock(name: string): void {
  const open = currentBlock(useWork.getState());
  changeBlock('Rename block', open.id, (block) => (block.name === name ? block : { ...block, name }));
}

/** Takes the open block out of the pattern; a pattern's only block stays. */
export function deleteBlock(): void {
  const { blocks } = pattern(useWork.getState());
  if (blocks.length < 2) return;
  const open = currentBlock(useWork.getState());
  const at = blocks.indexOf(open);
  changePattern('Delete block', (before) => ({
    ...before,
    blocks: before.blocks.filter((block) => block.id !== open.id),
  }));
  openBlock(blocks[at === 0 ? 1 : at - 1]!.id);
}

/** Moves the open block earlier (-1) or later (1) in the pattern. */
export function moveBlock(by: 1 | -1): void {
  const open = currentBlock(useWork.getState());
  changePattern('Move block', (before) => {
    const blocks = [...before.blocks];
    const at = blocks.indexOf(open);
    const to = at + by;
    if (to < 0 || to >= blocks.length) return before;
    blocks.splice(at, 1);
    blocks.splice(to, 0, open);
    return { ...before, blocks };
  });
}

/** The title as typed. */
export function renamePattern(title: string): void {
  changePattern('Rename pattern', (before) => (before.title === title ? before : { ...before, title }));
}
