import { type Pattern, parsePattern, startHistory, writePattern } from '@seamwright/pattern';
import { beforeEach, expect, test } from 'vitest';
import { newBlock } from './blocks.ts';
import { amendPattern, endStep, undo } from './changes.ts';
import {
  addFabric,
  addPlainFabrics,
  fabricsOf,
  paintPatches,
  recolourFabric,
  removeFabric,
  renameFabric,
} from './fabrics.ts';
import { freshPattern } from './fresh.ts';
import { useNotices } from './notices.ts';
import { openBlock } from './places.ts';
import { currentBlock, pattern, useWork } from './work.ts';

/** A pattern of one block with two patches, as the study leaves it. */
function withPatches(): Pattern {
  const fresh = freshPattern();
  const at = { x: 1, y: 1 };
  const patches = ['patch1', 'patch2'].map((id) => ({ id, signature: id, at, note: '' }));
  return { ...fresh, blocks: [{ ...fresh.blocks[0]!, patches }] };
}

beforeEach(() => {
  const pattern = withPatches();
  useWork.setState({ history: startHistory(pattern), blockId: pattern.blocks[0]!.id, inHand: null });
});

const fabrics = () => fabricsOf(useWork.getState());
const worn = () => currentBlock(useWork.getState()).patches.map(({ fabric }) => fabric);
const steps = () => useWork.getState().history.past.map(({ label }) => label);

test('several patches are painted in one step, and undo takes it off all of them', () => {
  const [sail, lamp] = fabrics();
  paintPatches(['patch1', 'patch2'], sail!);
  expect(worn()).toEqual([sail!.id, sail!.id]);
  paintPatches(['patch2'], lamp!);
  paintPatches(['patch1'], null);
  expect(worn()).toEqual([undefined, lamp!.id]);
  expect(steps()).toEqual([`Cut from ${sail!.name}`, `Cut from ${lamp!.name}`, 'Take the fabric off']);
  undo();
  undo();
  undo();
  expect(worn()).toEqual([undefined, undefined]);
});

test('painting with the same fabric again is no step', () => {
  paintPatches(['patch1'], fabrics()[0]!);
  paintPatches(['patch1'], fabrics()[0]!);
  expect(steps()).toHaveLength(1);
});

test('a fabric that is removed comes off the patches of every block, and undo puts it back on them', () => {
  const [sail] = fabrics();
  paintPatches(['patch1'], sail!);
  const painted = pattern(useWork.getState());
  const first = currentBlock(useWork.getState()).id;
  newBlock();
  removeFabric(sail!);
  expect(fabrics()).not.toContain(sail);
  openBlock(first);
  expect(worn()).toEqual([undefined, undefined]);
  expect(parsePattern(writePattern(pattern(useWork.getState()))).ok).toBe(true);
  undo();
  undo();
  expect(pattern(useWork.getState())).toEqual(painted);
});

test('who removes a fabric is told how many patches lose it, and of those out of sight', () => {
  const [sail, lamp, rope] = fabrics();
  paintPatches(['patch1', 'patch2'], sail!);
  paintPatches(['patch2'], lamp!);
  newBlock();
  const said = () => useNotices.getState().notice?.text;
  removeFabric(sail!);
  expect(said()).toBe(`Removed the fabric “${sail!.name}”. 1 patch has none now, in other blocks.`);
  undo();
  openBlock(pattern(useWork.getState()).blocks[0]!.id);
  paintPatches(['patch2'], sail!);
  removeFabric(sail!);
  expect(said()).toBe(`Removed the fabric “${sail!.name}”. 2 patches have none now.`);
  removeFabric(rope!);
  expect(said()).toBe(`Removed the fabric “${rope!.name}”. No patch was cut from it.`);
});

test('colours chosen in one go are one step', () => {
  const { id } = fabrics()[0]!;
  for (const colour of ['#111111', '#222222', '#333333']) recolourFabric(id, colour);
  endStep();
  recolourFabric(id, '#444444');
  renameFabric(id, 'Fog');
  addFabric('Rope', '#c8b48a');
  expect(steps()).toEqual([
    'Change the colour of a fabric',
    'Change the colour of a fabric',
    'Rename a fabric',
    'Add fabric Rope',
  ]);
  expect(fabrics()[0]).toEqual({ id, name: 'Fog', colour: '#444444' });
  expect(fabrics().at(-1)).toMatchObject({ name: 'Rope', colour: '#c8b48a' });
});

test('a pattern without fabrics can have the plain ones', () => {
  amendPattern(({ fabrics: _, ...before }) => before);
  expect(fabrics()).toEqual([]);
  addPlainFabrics();
  expect(fabrics()).toEqual(freshPattern().fabrics);
});
