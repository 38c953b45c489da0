import { rotation, type Segment, transformSegment } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { inTheSamePlace, ofTheSameShape } from '../src/alike.ts';
import type { Arrangement, Patch } from '../src/types.ts';
import { arranged, line, rectangle } from './drawings.ts';

const CROSS = [line(2, 0, 2, 4), line(0, 2, 4, 2)];
const DIAGONALS = [line(0, 0, 4, 4), line(4, 0, 0, 4)];
/** Eight triangles round the middle. */
const PINWHEEL = arranged(rectangle(4, 4), [...CROSS, ...DIAGONALS]);

const quarters = (segment: Segment): readonly Segment[] =>
  [0, 90, 180, 270].map((turn) => transformSegment(rotation(turn, { x: 2, y: 2 }), segment));

/** A square of a fourth, eight points, four triangles between them, four corners. */
const STAR = arranged(
  rectangle(4, 4),
  [line(1, 0, 1, 4), line(1, 0, 2, 1), line(3, 0, 2, 1), line(0, 1, 4, 1)].flatMap(quarters),
);

/** How large the sets are into which a choice of patches falls; fails unless each patch chooses the set that it is in. */
function setSizes(arrangement: Arrangement, choice: (patch: Patch) => readonly number[]): number[] {
  const sets = new Map<string, readonly number[]>();
  for (const patch of arrangement.patches) {
    const set = choice(patch);
    expect(set).toContain(patch.index);
    for (const other of set) expect(choice(arrangement.patches[other]!)).toEqual(set);
    sets.set(set.join(' '), set);
  }
  return [...sets.values()].map((set) => set.length).sort((a, b) => a - b);
}

const places = (arrangement: Arrangement, turnedOver: boolean) =>
  setSizes(arrangement, (patch) => inTheSamePlace(arrangement, patch, turnedOver));
const shapes = (arrangement: Arrangement) =>
  setSizes(arrangement, (patch) => ofTheSameShape(arrangement, patch));

// Expected sizes are counted by hand on the drawings.
describe('patches alike', () => {
  test('the blades of a pinwheel are told from what lies between them by turns, not by mirrors', () => {
    expect(places(PINWHEEL, false)).toEqual([4, 4]);
    expect(places(PINWHEEL, true)).toEqual([8]);
    expect(shapes(PINWHEEL)).toEqual([8]);
  });

  test('the points of a star are alike by mirrors, two and two by turns', () => {
    expect(STAR.patches).toHaveLength(17);
    expect(places(STAR, false)).toEqual([1, 4, 4, 4, 4]);
    expect(places(STAR, true)).toEqual([1, 4, 4, 8]);
    expect(shapes(STAR)).toEqual([1, 4, 4, 8]);
  });

  test('an outline without symmetry has no other places, but shapes are found again', () => {
    const outline = [...rectangle(4, 2).slice(0, 2), { x: 3, y: 2 }, { x: 0, y: 2 }];
    const strips = arranged(outline, [line(1, 0, 1, 2), line(2, 0, 2, 2)]);
    expect(places(strips, true)).toEqual([1, 1, 1]);
    expect(shapes(strips)).toEqual([1, 2]);
  });

  test('a seam of a neighbour that ends on a side makes no other shape', () => {
    // Left of the middle one oblong; right of it two squares: the middle seam has an end in it.
    const block = arranged(rectangle(4, 2), [line(1, 0, 1, 2), line(3, 0, 3, 2), line(3, 1, 4, 1)]);
    expect(shapes(block)).toEqual([1, 1, 2]);
    const halves = arranged(rectangle(4, 4), [line(2, 0, 2, 4), line(2, 2, 4, 2), line(2, 1, 4, 1)]);
    const [tall] = halves.patches.filter(({ area }) => Math.abs(area - 8) < 1e-9);
    expect(ofTheSameShape(halves, tall!)).toEqual([tall!.index]);
  });

  test('corners that were put down by eye still count as the same', () => {
    const by = 1 / 100;
    const drawn = arranged(rectangle(4, 4), [...CROSS, line(0, 0, 4, 4), line(4, by, by, 4)]);
    const one = drawn.patches.find(({ area }) => area > 1.5)!;
    expect(ofTheSameShape(drawn, one)).toHaveLength(8);
    const wide = arranged(rectangle(4, 4), [line(1.9, 0, 1.9, 4)]);
    expect(shapes(wide)).toEqual([1, 1]);
  });
});
