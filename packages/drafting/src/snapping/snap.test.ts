import { translation } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { lineBetween, withLines } from '../../test/exact.ts';
import { addSplit, transformParts } from '../edits/index.ts';
import { followersOf } from '../facts.ts';
import { drawnLines } from '../lines.ts';
import { rectangle, regularHexagon, rightTriangle, square } from '../outlines.ts';
import { gridInParts } from './grid.ts';
import { EXACTLY, inReadingOrder, placeExactly, SNAP_KINDS, type SnapKind, snap } from './snap.ts';
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

describe('what the new line can be like', () => {
  /** A slope from 0, 2 to 8, 6 (1 in 2), and an upright line at 6 from the top down to 3. */
  const slope = withLines(block, [0, 2, 8, 6], [6, 0, 6, 3]);
  const sloping = snapScene(slope);
  const drawing = (x: number, y: number, kinds?: readonly SnapKind[]) => ({
    ...near,
    from: { x, y },
    ...(kinds && { kinds: new Set<SnapKind>(kinds) }),
  });
  const line = lineBetween(slope, 0, 2, 8, 6);

  it.each([
    [
      'the foot on a line',
      [3, 8],
      [4.85, 4.5],
      { kind: 'perpendicular', at: { x: 4.8, y: 4.4 }, on: [line], like: line },
      'square to a line',
    ],
    [
      'square to the line it starts on',
      [2, 3],
      [1.45, 4.15],
      { kind: 'perpendicular', like: line },
      'square to a line that it starts on',
    ],
    [
      'parallel',
      [1, 5],
      [3.1, 6.1],
      { kind: 'parallel', at: { x: 3.12, y: 6.06 }, like: line },
      'parallel to a line',
    ],
    [
      'parallel, to the edge',
      [1, 5],
      [7, 7.9],
      { kind: 'parallel', at: { x: 7, y: 8 }, on: ['edge:p3'] },
      'parallel to a line, on the edge',
    ],
    ['straight on', [6, 3], [6.1, 7], { kind: 'parallel', at: { x: 6, y: 7 } }, 'straight on from a line'],
    [
      'level, as the edge',
      [1, 5],
      [3, 5.1],
      { kind: 'parallel', at: { x: 3, y: 5 }, like: 'edge:p1' },
      'parallel to the edge',
    ],
  ] as const)('is %s', (_, [x, y], [px, py], found, reason) => {
    const caught = snap({ x: px, y: py }, sloping, drawing(x, y));
    expect(caught).toMatchObject({
      ...found,
      reason,
      ...('at' in found && { at: { x: expect.closeTo(found.at.x, 9), y: expect.closeTo(found.at.y, 9) } }),
    });
  });

  it('is at a step of the angle', () => {
    const caught = snap({ x: 3, y: 5.1 }, sloping, { ...drawing(1, 7, ['angle']), angleStep: 15 });
    expect(caught).toMatchObject({ kind: 'angle', reason: 'at 45°' });
    expect(caught.at.x - 1).toBeCloseTo(7 - caught.at.y, 9);
    const steep = snap({ x: 2.05, y: 5.2 }, sloping, { ...drawing(1, 7, ['angle']), angleStep: 30 });
    expect(steep).toMatchObject({ kind: 'angle', reason: 'at 60°' });
    expect(snap({ x: 3, y: 5.6 }, sloping, { ...drawing(1, 7, ['angle']), angleStep: 45 }).kind).toBe('free');
    expect(snap({ x: 3, y: 5.1 }, sloping, drawing(1, 7, ['angle'])).kind).toBe('free');
  });

  it('at a step of the angle gives way to the grid on the line that is nearer, and only there', () => {
    const stepped = { ...drawing(1, 5, ['angle', 'line', 'grid']), grid: 1, angleStep: 15 };
    // From 1, 5 the way at 30° meets the slope at 3.320, 3.660; the grid meets it at 4, 4 and at 3, 3.5.
    expect(snap({ x: 3.05, y: 3.55 }, sloping, { ...stepped, radius: 0.4 })).toMatchObject({
      kind: 'line',
      reason: 'on a line, at the grid',
      at: { x: 3, y: 3.5 },
    });
    const met = snap({ x: 3.3, y: 3.7 }, sloping, { ...stepped, radius: 0.4 });
    expect(met).toMatchObject({ kind: 'angle', on: [line] });
    // Square to a line is rarer: it stays.
    const square = { ...drawing(3, 8), grid: 1, radius: 0.4 };
    expect(snap({ x: 4.98, y: 4.49 }, sloping, square).kind).toBe('perpendicular');
  });

  it('is as long as another, alone and parallel to one', () => {
    const caught = snap({ x: 3.1, y: 7.3 }, sloping, drawing(1, 5, ['equal']));
    expect(caught).toMatchObject({
      kind: 'equal',
      reason: 'as long as a line',
      like: lineBetween(slope, 6, 0, 6, 3),
    });
    expect(Math.hypot(caught.at.x - 1, caught.at.y - 5)).toBeCloseTo(3, 12);
    const both = snap({ x: 4.1, y: 5.05 }, sloping, drawing(1, 5));
    expect(both).toMatchObject({
      kind: 'parallel',
      reason: 'parallel to the edge, as long as a line',
      at: { x: 4, y: 5 },
    });
  });

  it('gives way to points and crossings, and comes before lines and the grid', () => {
    expect(snap({ x: 7.9, y: 7.9 }, sloping, drawing(1, 1)).kind).toBe('corner');
    const onGrid = { ...drawing(1, 5), grid: 1 };
    // The ray parallel to the slope meets the grid's upright line at 3.
    expect(snap({ x: 3.1, y: 5.95 }, sloping, onGrid)).toMatchObject({
      kind: 'parallel',
      reason: 'parallel to a line, at the grid',
      at: { x: 3, y: 6 },
    });
    // At 4 the ray is half an inch below the grid's point, which is nearer.
    expect(snap({ x: 4.05, y: 6.02 }, sloping, onGrid)).toMatchObject({ kind: 'grid', at: { x: 4, y: 6 } });
  });

  it('needs a first end, and can be switched off', () => {
    expect(snap({ x: 3.1, y: 6.1 }, sloping, near).kind).toBe('free');
    expect(snap({ x: 3.1, y: 6.1 }, sloping, drawing(1, 5, ['end', 'line'])).kind).toBe('free');
  });

  it('is what it says, wherever it is drawn', () => {
    const found = new Map<string, number>();
    fc.assert(
      fc.property(drawings, anywhere, anywhere, fc.constantFrom(0, 0.5), (some, from, pointer, grid) => {
        const start = snap(from, snapScene(some), near).at;
        const caught = snap(pointer, snapScene(some), { radius: 0.3, grid, from: start, angleStep: 15 });
        found.set(caught.kind, (found.get(caught.kind) ?? 0) + 1);
        const way = { x: caught.at.x - start.x, y: caught.at.y - start.y };
        const size = Math.hypot(way.x, way.y);
        const like = caught.like === undefined ? undefined : drawnLines(some).get(caught.like)!;
        const along = like && { x: like.to.x - like.from.x, y: like.to.y - like.from.y };
        const long = along ? Math.hypot(along.x, along.y) : 1;
        const sine = along ? (way.x * along.y - way.y * along.x) / (size * long) : 0;
        const cosine = along ? (way.x * along.x + way.y * along.y) / (size * long) : 0;
        if (caught.kind === 'parallel') expect(Math.abs(sine)).toBeLessThan(1e-5);
        if (caught.kind === 'perpendicular') expect(Math.abs(cosine)).toBeLessThan(1e-5);
        if (caught.kind === 'equal') expect(size).toBeCloseTo(long, 5);
        if (caught.kind === 'angle') {
          const steps = (Math.atan2(-way.y, way.x) * 180) / Math.PI / 15;
          expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-5);
        }
        for (const id of caught.on ?? []) {
          const { from: a, to: b } = drawnLines(some).get(id)!;
          const off = (b.x - a.x) * (caught.at.y - a.y) - (b.y - a.y) * (caught.at.x - a.x);
          expect(Math.abs(off) / Math.hypot(b.x - a.x, b.y - a.y)).toBeLessThan(2e-6);
        }
      }),
      { seed: 112, numRuns: 600 },
    );
    for (const kind of ['parallel', 'perpendicular', 'equal', 'angle'])
      expect(found.get(kind), kind).toBeGreaterThan(3);
  });
});

describe('a grid in parts', () => {
  it('divides the block, wherever it lies, and every edge', () => {
    const oblong = must(rectangle(9, 6));
    const thirds = gridInParts(oblong, 3, 2);
    expect(snap({ x: 3.3, y: 2.8 }, snapScene(oblong), { radius: 0.1, grid: thirds }).at).toEqual({
      x: 3,
      y: 3,
    });
    const triangle = must(rightTriangle(6, 8));
    const caught = snap({ x: 1.1, y: 1.7 }, snapScene(triangle), {
      radius: 0.4,
      grid: gridInParts(triangle, 5),
    });
    expect(caught).toMatchObject({ kind: 'edge', reason: 'on the edge, at 1 of 5 parts' });
    expect(caught.at.x).toBeCloseTo(1.2, 12);
    expect(caught.at.y).toBeCloseTo(1.6, 12);
  });

  it('begins in the block’s corner', () => {
    const moved = must(transformParts(block, { points: block.outline, lines: [] }, translation(0.3, -0.2)));
    const grid = gridInParts(moved, 4);
    expect(grid).toMatchObject({ origin: { x: 0.3, y: -0.2 }, across: 2, down: 2 });
    expect(snap({ x: 4, y: 4 }, snapScene(moved), { radius: 0.01, grid }).at).toEqual({ x: 4.3, y: 3.8 });
  });
});

describe('kinds', () => {
  it('have each a name to switch them by', () => {
    expect(new Set(SNAP_KINDS.map(({ kind }) => kind)).size).toBe(SNAP_KINDS.length);
    expect(SNAP_KINDS.every(({ name }) => /^[A-Z]/.test(name))).toBe(true);
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
