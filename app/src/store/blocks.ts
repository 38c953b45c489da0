import type { Drawing } from '@seamwright/arrangement';
import type { Block } from '@seamwright/pattern';
import { changeBlock, changePattern, tellWithUndo } from './changes.ts';
import { freshBlock, isFresh, newBlockId } from './fresh.ts';
import { announce } from './notices.ts';
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

/**
 * Adds a drawing from elsewhere as a block; it takes the place of an open block in which nothing was drawn yet, and its name,
 * unless the maker gave it one.
 */
export function addDrawing(label: string, name: string, drawing: Drawing): void {
  const open = currentBlock(useWork.getState());
  if (!isFresh(open)) {
    addBlock(label, { ...freshBlock(name), drawing });
    return;
  }
  const named = !/^Block \d+$/.test(open.name);
  changeBlock(label, open.id, (block) => ({ ...block, name: named ? block.name : name, drawing }));
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
  tellWithUndo(`Deleted the block “${open.name}”.`);
}

/**
 * Puts a block at another place among the blocks.
 *
 * @param to its index afterwards; what is beyond either end is that end
 */
export function moveBlock(id: string, to: number): void {
  const { blocks } = pattern(useWork.getState());
  const at = blocks.findIndex((block) => block.id === id);
  const place = Math.min(Math.max(to, 0), blocks.length - 1);
  if (at < 0 || place === at) return;
  changePattern('Move block', (before) => {
    const moved = before.blocks.filter((block) => block.id !== id);
    moved.splice(place, 0, before.blocks[at]!);
    return { ...before, blocks: moved };
  });
  announce(`${blocks[at]!.name} is now ${place + 1} of ${blocks.length}`);
}

/** The title as typed. */
export function renamePattern(title: string): void {
  changePattern('Rename pattern', (before) => (before.title === title ? before : { ...before, title }));
}
