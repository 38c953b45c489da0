import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { addSplit } from '../edits/index.ts';
import { followersOf } from '../facts.ts';
import { drawnLines } from '../lines.ts';
import { regularHexagon, square } from '../outlines.ts';
import { EXACTLY, inReadingOrder, placeExactly, type SnapKind, snap } from './snap.ts';
import { snapScene } from './snap-scene.ts';

const block = must(square(8));
const upright = must(
  addSplit(block, { at: { x: 3, y: 0 }, on: ['edge:p1'] }, { at: { x: 3, y: 8 }, on: ['edge:p3'] }),
);
/** A line from 3, 0 down to 3, 8 and one across it from 1, 4 to 8, 4. */
const crossed = must(addSplit(upright, { at: { x: 1, y: 4 } }, { at: { x: 8, y: 4 }, on: ['edge:p2'] }));
const scene = snapScene(crossed);
const near = { radius: 0.2, grid: 0 };

describe('snap', () => {
  it.each([
    ['corner', { x: 0.1, y: 0.1 }, { x: 0, y: 0 }, 'corner of the block'],
    ['end', { x: 1.1, y: 4.1 }, { x: 1, y: 4 }, 'end of a line'],
    ['crossing', { x: 3.1, y: 4.1 }, { x: 3, y: 4 }, 'crossing of two lines'],
    ['middle', { x: 0.1, y: 4.1 }, { x: 0, y: 4 }, 'middle of the edge'],
    ['middle', { x: 4.6, y: 4.1 }, { x: 4.5, y: 4 }, 'middle of a line'],
    ['middle', { x: 3.1, y: 2.1 }, { x: 3, y: 2 }, 'middle of a stretch of a line'],
    ['middle', { x: 1.6, y: 0.1 }, { x: 1.5, y: 0 }, 'middle of a stretch of the edge'],
    ['line', { x: 3.1, y: 1.1 }, { x: 3, y: 1.1 }, 'on a line'],
    ['edge', { x: 2.4, y: 0.1 }, { x: 2.4, y: 0 }, 'on the edge'],
    ['free', { x: 5.3, y: 2.2 }, { x: 5.3, y: 2.2 }, ''],
  ] as const)('is caught by a %s', (kind, pointer, at, reason) => {
    expect(snap(pointer, scene, near)).toMatchObject({ kind, at, reason });
  });

  it('says the middle of the block', () => {
    expect(snap({ x: 2.1, y: 1.8 }, snapScene(must(regularHexagon(2))), near)).toMatchObject({
      kind: 'middle',
      reason: 'middle of the block',
      at: { x: expect.closeTo(2), y: expect.closeTo(Math.sqrt(3)) },
    });
  });

  it('names the point, or the lines, so that the drawing can keep the fact', () => {
    expect(snap({ x: 1, y: 4 }, scene, near)).toMatchObject({ point: 'p8' });
    expect(snap({ x: 3, y: 4 }, scene, near).on).toEqual(['s7', 's10']);
    expect(snap({ x: 3, y: 1.1 }, scene, near).on).toEqual(['s7']);
    expect(snap({ x: 2.4, y: 0 }, scene, near).on).toEqual(['edge:p1']);
  });

  it('prefers points to crossings, crossings to middles, middles to lines, lines to the grid', () => {
    const wide = { radius: 3, grid: 1 };
    const order: readonly SnapKind[] = ['end', 'crossing', 'middle', 'line', 'grid', 'free'];
    const pointer = { x: 2.6, y: 3.6 };
    order.forEach((kind, i) => {
      expect(snap(pointer, scene, { ...wide, kinds: new Set(order.slice(i)) }).kind).toBe(kind);
    });
  });

  it('with a grid, catches lines where they meet it, and grid points from any distance', () => {
    const grid = { radius: 0.2, grid: 0.5 };
    expect(snap({ x: 3.1, y: 1.1 }, scene, grid)).toMatchObject({ at: { x: 3, y: 1 }, on: ['s7'] });
    expect(snap({ x: 2.4, y: 0.1 }, scene, grid)).toMatchObject({ at: { x: 2.5, y: 0 }, on: ['edge:p1'] });
    expect(snap({ x: 5.3, y: 2.2 }, scene, grid)).toMatchObject({ kind: 'grid', at: { x: 5.5, y: 2 } });
  });

  it('finds what is where the grid leads, though the pointer is farther away than the radius', () => {
    const grid = { radius: 0.1, grid: 1 };
    expect(snap({ x: 0.4, y: 0.4 }, scene, grid)).toMatchObject({ kind: 'corner', point: 'p1' });
    expect(snap({ x: 1.4, y: 4.4 }, scene, grid)).toMatchObject({ kind: 'end', point: 'p8' });
    expect(snap({ x: 3.4, y: 4.4 }, scene, grid)).toMatchObject({ kind: 'crossing', on: ['s7', 's10'] });
    expect(snap({ x: 3.4, y: 2.4 }, scene, grid)).toMatchObject({ kind: 'middle', on: ['s7'] });
    const onLine = { kind: 'line', at: { x: 3, y: 1 }, on: ['s7'], reason: 'on a line, at the grid' };
    expect(snap({ x: 3.4, y: 1.4 }, scene, grid)).toMatchObject(onLine);
    expect(snap({ x: 5.3, y: 0.4 }, scene, grid)).toMatchObject({ kind: 'edge', on: ['edge:p1'] });
  });

  it('on a slanted line, the grid gives places that are on both', () => {
    const slanted = snapScene(must(addSplit(block, { at: { x: 0, y: 1 } }, { at: { x: 8, y: 7 } })));
    const caught = snap({ x: 2.1, y: 2.5 }, slanted, { radius: 0.3, grid: 1 });
    expect(caught).toMatchObject({ kind: 'line', at: { x: 2, y: 2.5 }, reason: 'on a line, at the grid' });
  });

  it('leaves out what follows the point that is dragged', () => {
    const rest = snapScene(crossed, followersOf(crossed, 'p5'));
    expect(snap({ x: 3, y: 0 }, rest, near)).toMatchObject({ kind: 'edge' });
    expect(snap({ x: 3, y: 2 }, rest, near)).toMatchObject({ kind: 'free' });
    expect(snap({ x: 3, y: 8 }, rest, near)).toMatchObject({ kind: 'end' });
  });

  it('is as near as the radius allows, on the lines that it names, and the same for the same place', () => {
    fc.assert(
      fc.property(drawings, anywhere, fc.constantFrom(0.05, 0.4), (drawing, pointer, radius) => {
        const onGrid = snap(pointer, snapScene(drawing), { radius, grid: 0.5 });
        const there = snap(onGrid.at, snapScene(drawing), EXACTLY);
        expect(onGrid.kind === 'grid' || onGrid.kind === 'free').toBe(there.kind === 'free');
        expect(onGrid.point).toBe(there.point);

        const found = snap(pointer, snapScene(drawing), { radius, grid: 0 });
        expect(Math.hypot(found.at.x - pointer.x, found.at.y - pointer.y)).toBeLessThanOrEqual(
          radius + 1e-12,
        );
        expect(found.on !== undefined && found.point !== undefined).toBe(false);
        if (found.point !== undefined) expect(drawing.points[found.point]).toMatchObject(found.at);
        for (const id of found.on ?? []) {
          const { from, to } = drawnLines(drawing).get(id)!;
          const area = (to.x - from.x) * (found.at.y - from.y) - (to.y - from.y) * (found.at.x - from.x);
          expect(Math.abs(area) / Math.hypot(to.x - from.x, to.y - from.y)).toBeLessThan(1e-9);
        }
        const again = snap(found.at, snapScene(drawing), { radius, grid: 0 });
        if (found.point !== undefined) expect(again.point).toBeDefined();
      }),
      { seed: 111, numRuns: 200 },
    );
  });
});

describe('placeExactly', () => {
  it('finds what is in the very place, and is not pulled by middles', () => {
    expect(placeExactly({ x: 3, y: 4 }, scene)).toMatchObject({ on: ['s7', 's10'] });
    expect(placeExactly({ x: 1, y: 4 }, scene)).toMatchObject({ point: 'p8' });
    expect(placeExactly({ x: 4.51, y: 4 }, scene)).toMatchObject({ at: { x: 4.51, y: 4 }, on: ['s10'] });
    expect(placeExactly({ x: 5.3, y: 2.2 }, scene)).toMatchObject({ kind: 'free' });
  });
});

describe('inReadingOrder', () => {
  it('goes row by row from the top left', () => {
    const order = inReadingOrder(scene.places).map(({ at }) => at);
    expect(order[0]).toEqual({ x: 0, y: 0 });
    expect(order.at(-1)).toEqual({ x: 8, y: 8 });
    expect(order.filter(({ y }) => y === 4).map(({ x }) => x)).toEqual([0, 1, 2, 3, 4, 4.5, 5.5, 8]);
  });
});
