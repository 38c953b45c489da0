import type { Drawing } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { square } from '../src/outlines.ts';
import { must } from './drawings.ts';
import { lineBetween, pointAt, withLines } from './exact.ts';
import { faultsOf } from './sound.ts';

/** A level line, and a short one that ends on it. */
const rail = withLines(must(square(8)), [0, 4, 8, 4], [4, 4, 4, 6]);
const onRail = pointAt(rail, 4, 4);
const level = lineBetween(rail, 0, 4, 8, 4);
const [first, second] = rail.outline;

const moved = (id: string, to: object): Drawing => ({
  ...rail,
  points: { ...rail.points, [id]: { ...rail.points[id]!, ...to } },
});
const without = (id: string): Drawing => {
  const { [id]: _, ...points } = rail.points;
  return { ...rail, points };
};
const [split] = rail.splits;

describe('the check that a drawing holds together', () => {
  it('finds nothing wrong with one that does', () => {
    expect(faultsOf(rail)).toEqual([]);
  });

  it.each<[string, Drawing]>([
    ['is not simple', { ...rail, outline: rail.outline.toReversed().toSpliced(0, 2, second!, first!) }],
    ['in along x', moved(second!, { x: 121 })],
    ['is twice in the outline', { ...rail, outline: [...rail.outline, first!] }],
    ['two lines have one name', { ...rail, splits: [...rail.splits, split!] }],
    ['is the end of no line', { ...rail, splits: rail.splits.filter(({ id }) => id === level) }],
    ['is nowhere', without(onRail)],
    ['a line is drawn twice', { ...rail, splits: [...rail.splits, { ...split!, id: 'again' }] }],
    ['has no length', moved(pointAt(rail, 4, 6), { y: 4 })],
    ['calls itself', moved(onRail, { id: 'other' })],
    ['has colour', moved(onRail, { colour: 'red' })],
    ['lies on 3 lines', moved(onRail, { on: [level, level, level] })],
    ['in off', moved(onRail, { y: 4.01 })],
    ['is beyond the ends', moved(onRail, { x: 8.01 })],
    ['hangs on itself', moved(pointAt(rail, 0, 4), { on: [level] })],
  ])('finds what %s', (fault, drawing) => {
    expect(faultsOf(drawing).join('; ')).toContain(fault);
  });
});
