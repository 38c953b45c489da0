import type { Drawing } from '@seamwright/arrangement';
import { addSplit } from '@seamwright/drafting';
import { fail, ok } from '@seamwright/geometry';
import { newTracing, startHistory } from '@seamwright/pattern';
import { beforeEach, expect, test } from 'vitest';
import { addDrawing, deleteBlock, duplicateBlock, moveBlock, newBlock, renameBlock } from './blocks.ts';
import { change, changeBlock, endStep, goToStep, holdInHand, redo, showIn, undo } from './changes.ts';
import { freshPattern } from './fresh.ts';
import { useNotices } from './notices.ts';
import { openBlock } from './places.ts';
import { repairedDrawing } from './repairs.ts';
import { currentBlock, currentDrawing, pattern, useWork } from './work.ts';

beforeEach(() => {
  const pattern = freshPattern();
  useWork.setState({ history: startHistory(pattern), blockId: pattern.blocks[0]!.id, inHand: null });
  useNotices.setState({ notice: null });
});

const open = () => currentBlock(useWork.getState());
const names = () => useWork.getState().history.present.blocks.map((block) => block.name);
const across = (drawing: Drawing) => addSplit(drawing, { at: { x: 0, y: 2 } }, { at: { x: 6, y: 2 } });

test('an edit is one step, and undo gives back the very drawing that was there', () => {
  const before = open().drawing;
  change('Add split', across);
  expect(open().drawing.splits).toHaveLength(1);
  undo();
  expect(open().drawing).toBe(before);
  redo();
  expect(open().drawing.splits).toHaveLength(1);
});

test('an edit that is refused leaves the drawing and the history as they were, and says why', () => {
  const { history } = useWork.getState();
  change('Add split', () => fail('Both ends are in one place', '', 'Put one farther away'));
  expect(useWork.getState().history).toBe(history);
  expect(useNotices.getState().notice?.text).toBe('Both ends are in one place. Put one farther away.');
});

test('an edit that changes nothing is no step', () => {
  change('Nothing', (drawing) => ok(drawing));
  expect(useWork.getState().history.past).toHaveLength(0);
});

test('edits of one group are one step until the step is ended', () => {
  const setGrid = (grid: number) =>
    changeBlock('Set grid', open().id, (block) => ({ ...block, grid }), 'grid');
  setGrid(1);
  setGrid(2);
  expect(useWork.getState().history.past).toHaveLength(1);
  endStep();
  setGrid(3);
  expect(useWork.getState().history.past).toHaveLength(2);
});

test('a drawing in hand is shown, and is gone from the document when let go', () => {
  const before = open().drawing;
  const dragged = { ...before, splits: [] };
  holdInHand(dragged);
  expect(currentDrawing(useWork.getState())).toBe(dragged);
  expect(open().drawing).toBe(before);
  holdInHand(null);
  expect(currentDrawing(useWork.getState())).toBe(before);
});

test('undo opens the block that it changes', () => {
  const first = open().id;
  newBlock();
  const second = open().id;
  change('Add split', across);
  openBlock(first);
  undo();
  expect(useWork.getState().blockId).toBe(second);
  expect(open().drawing.splits).toHaveLength(0);
});

test('undo opens the block whose picture it changes', () => {
  const first = open().id;
  newBlock();
  const second = open().id;
  const picture = { name: 'pier.png', width: 1, height: 1, data: '' };
  const tracing = newTracing(picture, { x: 3, y: 3, width: 6, turn: 0 });
  changeBlock('Bring in a picture', second, (block) => ({ ...block, tracing }));
  openBlock(first);
  undo();
  expect(useWork.getState().blockId).toBe(second);
  expect(open().tracing).toBeUndefined();
});

test('undo opens the block whose name or grid it changes', () => {
  const first = open().id;
  newBlock();
  const second = open().id;
  renameBlock('Lantern');
  changeBlock('Set grid', second, (block) => ({ ...block, grid: 1 }));
  for (const _ of ['grid', 'name']) {
    openBlock(first);
    undo();
    expect(open().id).toBe(second);
  }
  expect(open()).toMatchObject({ name: 'Block 2', grid: 0.5 });
});

test('where undo takes the open block away, the one before it opens', () => {
  newBlock();
  newBlock();
  newBlock();
  undo();
  expect(open().name).toBe('Block 3');
  expect(useWork.getState().blockId).toBe(open().id);
});

test('undo does not change the unit that the maker reads in', () => {
  change('Add split', across);
  showIn('cm');
  undo();
  expect(useWork.getState().history.present.unit).toBe('cm');
});

test('blocks are added, copied, moved, renamed and deleted, each in one step', () => {
  newBlock();
  expect(names()).toEqual(['Block 1', 'Block 2']);
  renameBlock('Lantern');
  duplicateBlock();
  expect(names()).toEqual(['Block 1', 'Lantern', 'Lantern, copy']);
  moveBlock(open().id, 1);
  expect(names()).toEqual(['Block 1', 'Lantern, copy', 'Lantern']);
  deleteBlock();
  expect(names()).toEqual(['Block 1', 'Lantern']);
  expect(open().name).toBe('Block 1');
  expect(useWork.getState().history.past).toHaveLength(5);
});

test('a block goes no farther than either end of the pattern', () => {
  newBlock();
  const { id } = open();
  moveBlock(id, 7);
  expect(useWork.getState().history.past).toHaveLength(1);
  moveBlock(id, -3);
  expect(names()).toEqual(['Block 2', 'Block 1']);
});

test('a deleted block is offered back until the next step', () => {
  newBlock();
  deleteBlock();
  expect(useNotices.getState().notice?.text).toBe('Deleted the block “Block 2”.');
  useNotices.getState().notice?.offer?.run();
  expect(names()).toEqual(['Block 1', 'Block 2']);
  expect(useNotices.getState().notice).toBeNull();
  deleteBlock();
  renameBlock('Lantern');
  expect(useNotices.getState().notice).toBeNull();
});

test('a drawing takes the place of an untouched block only', () => {
  const { drawing } = open();
  const drawn = across(drawing);
  if (!drawn.ok) throw new Error(drawn.problem.what);
  addDrawing('Start from Rail', 'Rail', drawn.value);
  expect(names()).toEqual(['Rail']);
  addDrawing('Start from Rail', 'Rail', drawn.value);
  expect(names()).toEqual(['Rail', 'Rail']);
  newBlock();
  renameBlock('Lantern');
  addDrawing('Start from Rail', 'Rail', drawn.value);
  expect(names()).toEqual(['Rail', 'Rail', 'Lantern']);
  expect(open().drawing).toBe(drawn.value);
});

test('one goes to any step, and on to the last again', () => {
  const first = pattern(useWork.getState());
  change('Add split', across);
  renameBlock('Lantern');
  newBlock();
  const last = pattern(useWork.getState());
  goToStep(0);
  expect(pattern(useWork.getState())).toBe(first);
  goToStep(3);
  expect(pattern(useWork.getState())).toBe(last);
});

test('the only block of a pattern cannot be deleted', () => {
  deleteBlock();
  expect(names()).toEqual(['Block 1']);
});

test('a repair is applied whole or not at all', () => {
  const { drawing } = open();
  const good = [
    { x: 0, y: 1 },
    { x: 6, y: 1 },
  ] as const;
  const nowhere = [
    { x: 2, y: 2 },
    { x: 2, y: 2 },
  ] as const;
  const repaired = repairedDrawing(drawing, { message: [], splits: [good] });
  expect(repaired.ok && repaired.value.splits).toHaveLength(1);
  expect(repairedDrawing(drawing, { message: [], splits: [good, nowhere] }).ok).toBe(false);
});
