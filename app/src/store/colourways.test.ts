import { demoPattern, fabricIn, startHistory } from '@seamwright/pattern';
import { beforeEach, expect, test } from 'vitest';
import { redo, undo } from './changes.ts';
import { followSteps } from './colourway-of-step.ts';
import {
  addColourway,
  colourwayInHand,
  listedColourways,
  removeColourway,
  renameColourway,
  shuffleFabrics,
  swapFabrics,
  takeColourway,
} from './colourways.ts';
import { currentBlock, currentColourway, pattern, useWork } from './work.ts';

beforeEach(() => {
  const pattern = demoPattern();
  useWork.setState({ history: startHistory(pattern), blockId: pattern.blocks[0]!.id, colourwayId: null });
});

const listed = () => listedColourways(useWork.getState());
const inHand = () => colourwayInHand(useWork.getState());
const worn = () => {
  const work = useWork.getState();
  return currentBlock(work).patches.map((record) => fabricIn(record, currentColourway(work)));
};

test('a colourway begins as a copy of the one in hand, and goes its own way', () => {
  const first = worn();
  addColourway();
  expect(listed().map(({ name }) => name)).toEqual(['Colourway 1', 'Colourway 2']);
  expect(inHand()).toBe(listed()[1]);
  expect(worn()).toEqual(first);
  swapFabrics(first[0]!, first[1]!);
  const swapped = first.map((id) => (id === first[0] ? first[1] : id === first[1] ? first[0] : id));
  expect(worn()).toEqual(swapped);
  takeColourway(listed()[0]!);
  expect(worn()).toEqual(first);
  addColourway();
  expect(inHand()?.name).toBe('Colourway 3');
});

test('removing one leaves another in hand, and undo brings back all of it', () => {
  addColourway();
  shuffleFabrics();
  const shuffled = worn();
  renameColourway(inHand()!.id, 'Fog');
  const before = pattern(useWork.getState());
  // The first goes: the second takes its place.
  removeColourway(listed()[0]!);
  expect(listed()).toEqual([]);
  expect(worn()).toEqual(shuffled);
  undo();
  expect(pattern(useWork.getState())).toBe(before);
  removeColourway(listed()[1]!);
  expect(inHand()).toBeUndefined();
  expect(currentColourway(useWork.getState())).toBeNull();
});

test('a shuffle is one step; the next press shuffles what is there', () => {
  const first = worn();
  const steps = useWork.getState().history.past.length;
  shuffleFabrics();
  worn().forEach((id, i) => {
    expect(id).not.toBe(first[i]);
  });
  expect(useWork.getState().history.past.length).toBe(steps + 1);
  undo();
  expect(worn()).toEqual(first);
});

test('undo of what was painted in another colourway takes that one in hand, and redo, too', () => {
  followSteps();
  addColourway();
  const [first, second] = listed();
  shuffleFabrics();
  const shuffled = worn();
  takeColourway(first!);
  undo();
  expect(inHand()).toBe(second);
  expect(worn()).not.toEqual(shuffled);
  takeColourway(first!);
  redo();
  expect(inHand()).toBe(second);
  expect(worn()).toEqual(shuffled);
  // And back to the first, which has a key of its own kind.
  takeColourway(first!);
  shuffleFabrics();
  takeColourway(second!);
  undo();
  expect(inHand()).toBe(first);
});
