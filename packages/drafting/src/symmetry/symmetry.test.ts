import { arrange, type Drawing } from '@seamwright/arrangement';
import {
  determinant,
  fail,
  midpoint,
  type Point,
  type Transform,
  transformPoint,
} from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, must } from '../../test/drawings.ts';
import { lineBetween, pointAt, splitsOf, withLines } from '../../test/exact.ts';
import { expectSound, frozen } from '../../test/sound.ts';
import { centreOf } from '../centre.ts';
import { deleteParts, parallelCopy, splitThrough } from '../edits/index.ts';
import { followersOf } from '../facts.ts';
import { drawnLines } from '../lines.ts';
import { equilateralTriangle, rectangle, regularHexagon, regularOctagon, square } from '../outlines.ts';
import { snap } from '../snapping/snap.ts';
import { snapScene } from '../snapping/snap-scene.ts';
import { addSymmetric } from './add-symmetric.ts';
import { imagesOf } from './images.ts';
import { mirrorAcross } from './mirror.ts';
import {
  moveLineSymmetric,
  movePointsSymmetric,
  transformPartsSymmetric,
  withImages,
} from './move-symmetric.ts';
import { addRepeated, eraseSymmetric, putLineEndSymmetric } from './repeat.ts';
import { NO_SYMMETRY, type Symmetry, transformsOf } from './symmetry.ts';

const block = must(square(8));
const middle = { x: 4, y: 4 };

const near = (p: Point, q: Point) => Math.max(Math.abs(p.x - q.x), Math.abs(p.y - q.y)) <= 1e-9;

/**
 * Checks to 1e-9 in that every point has its image and every split the split between the images; by comparing all with
 * all, and with turns and mirrorings that are worked out here.
 */
function expectSymmetric(drawing: Drawing, { turns, mirrors }: Symmetry, centre: Point): void {
  const points = Object.values(drawing.points);
  const pairs = new Set(drawing.splits.flatMap(({ from, to }) => [`${from} ${to}`, `${to} ${from}`]));
  const turned = ({ x, y }: Point, radians: number): Point => ({
    x: centre.x + (x - centre.x) * Math.cos(radians) - (y - centre.y) * Math.sin(radians),
    y: centre.y + (x - centre.x) * Math.sin(radians) + (y - centre.y) * Math.cos(radians),
  });
  const upset = (p: Point): Point => ({ x: p.x, y: 2 * centre.y - p.y });
  const generators = [
    ...(turns > 1 ? [(p: Point) => turned(p, (2 * Math.PI) / turns)] : []),
    // Mirroring across an axis: turn it level, turn upside down, turn it back. (Angles grow anticlockwise.)
    ...mirrors.map(
      (axis) => (p: Point) => turned(upset(turned(p, (axis * Math.PI) / 180)), (-axis * Math.PI) / 180),
    ),
  ];
  for (const image of generators) {
    const imageOf = new Map(points.map((p) => [p.id, points.find((q) => near(q, image(p)))?.id]));
    expect([...imageOf].filter(([, id]) => id === undefined)).toEqual([]);
    const hasImage = ({ from, to }: { readonly from: string; readonly to: string }) =>
      pairs.has(`${imageOf.get(from)} ${imageOf.get(to)}`);
    expect(drawing.splits.filter((split) => !hasImage(split))).toEqual([]);
  }
}

/** Outlines with symmetries that they have themselves. */
const CASES: readonly (readonly [string, Drawing, readonly Symmetry[]])[] = [
  [
    'square',
    block,
    [
      { turns: 2, mirrors: [] },
      { turns: 4, mirrors: [] },
      { turns: 1, mirrors: [90] },
      { turns: 1, mirrors: [45] },
      { turns: 2, mirrors: [0] },
      { turns: 4, mirrors: [135] },
      { turns: 1, mirrors: [0, 45] },
    ],
  ],
  [
    'hexagon',
    must(regularHexagon(4)),
    [
      { turns: 3, mirrors: [] },
      { turns: 6, mirrors: [] },
      { turns: 6, mirrors: [30] },
      { turns: 3, mirrors: [90] },
      { turns: 1, mirrors: [150] },
    ],
  ],
  [
    'octagon',
    must(regularOctagon(3)),
    [
      { turns: 8, mirrors: [] },
      { turns: 8, mirrors: [22.5] },
      { turns: 4, mirrors: [45] },
    ],
  ],
  [
    'triangle',
    must(equilateralTriangle(8)),
    [
      { turns: 3, mirrors: [] },
      { turns: 3, mirrors: [90] },
    ],
  ],
];

const steps = fc.array(
  fc.record({
    kind: fc.constantFrom(
      ...['line', 'line', 'run', 'point', 'move line', 'nudge', 'delete'],
      ...['parallel', 'through', 'erase', 'put end'],
    ),
    from: anywhere,
    to: anywhere,
    radius: fc.constantFrom(1 / 64, 0.3),
    index: fc.nat({ max: 1000 }),
  }),
  { minLength: 1, maxLength: 12, size: 'max' },
);

describe.each(CASES)('in a %s', (_, outline, symmetries) => {
  it.each(symmetries)('turned %o, what is drawn, moved and deleted is symmetric to 1e-9 in', (symmetry) => {
    const centre = centreOf(outline);
    const done = new Map<string, number>();
    fc.assert(
      fc.property(steps, (script) => {
        let drawing = outline;
        for (const { kind, from, to, radius, index } of script) {
          const result = play(drawing, kind, from, to, radius, index, symmetry);
          if (!result.ok) continue;
          drawing = frozen(result.value);
          expectSound(drawing);
          expectSymmetric(drawing, symmetry, centre);
          done.set(kind, (done.get(kind) ?? 0) + 1);
        }
      }),
      { seed: 161, numRuns: 40 },
    );
    for (const kind of ['line', 'run', 'point', 'nudge', 'delete', 'parallel', 'through', 'erase', 'put end'])
      expect(done.get(kind), kind).toBeGreaterThan(3);
  });
});

function play(
  drawing: Drawing,
  kind: string,
  from: Point,
  to: Point,
  radius: number,
  index: number,
  symmetry: Symmetry,
) {
  const scene = snapScene(drawing);
  // The corners stay: with them the outline would lose its own symmetry.
  const ids = Object.keys(drawing.points).filter((id) => !drawing.outline.includes(id));
  const point = ids[index % Math.max(1, ids.length)] ?? 'none';
  const split = drawing.splits[index % Math.max(1, drawing.splits.length)]?.id ?? 'none';
  switch (kind) {
    case 'line':
    case 'run': {
      const options = { radius, grid: 0 };
      const ends = kind === 'run' ? 'run' : 'held';
      return addSymmetric(drawing, snap(from, scene, options), snap(to, scene, options), symmetry, ends);
    }
    case 'point': {
      const rest = snapScene(drawing, followersOf(drawing, point));
      const target = snap(to, rest, { radius, grid: 0 });
      return movePointsSymmetric(drawing, new Map([[point, target]]), symmetry);
    }
    case 'move line':
      return moveLineSymmetric(drawing, split, (to.x - 4) / 4, symmetry);
    case 'nudge': {
      const parts = index % 2 === 0 ? { points: [point], lines: [] } : { points: [], lines: [split] };
      const by = { a: 1, b: 0, c: 0, d: 1, e: 0.25, f: 1 / 32 };
      return transformPartsSymmetric(drawing, parts, by, symmetry);
    }
    case 'parallel':
      return addRepeated(drawing, (before) => parallelCopy(before, split, (to.x - 4) / 2), symmetry);
    case 'through':
      return addRepeated(drawing, (before) => splitThrough(before, { at: from }, index * 15), symmetry);
    case 'erase': {
      const line = drawnLines(drawing).get(split);
      if (line === undefined) return fail('There is no line yet', '', 'Draw one');
      const half = index % 3 === 0 ? line.to : midpoint(line.from, line.to);
      return eraseSymmetric(drawing, [{ a: line.from, b: half }], symmetry);
    }
    case 'put end':
      return putLineEndSymmetric(drawing, split, index % 2 === 0 ? 'from' : 'to', to, symmetry);
    default:
      return deleteParts(drawing, withImages(drawing, { points: [], lines: [split] }, symmetry));
  }
}

describe('the transforms of a symmetry', () => {
  const of = (turns: Symmetry['turns'], mirrors: readonly number[]) =>
    must(transformsOf({ turns, mirrors }, middle));

  it('are as many as plane geometry has', () => {
    expect(of(1, [])).toHaveLength(1);
    expect(of(4, [])).toHaveLength(4);
    expect(of(1, [90])).toHaveLength(2);
    expect(of(4, [0])).toHaveLength(8);
    // Two axes at right angles turn by a half, at 45° by a quarter, at 60° by a third.
    expect(of(1, [0, 90])).toHaveLength(4);
    expect(of(1, [0, 45])).toHaveLength(8);
    expect(of(1, [0, 60])).toHaveLength(6);
    expect(of(3, [0, 45])).toHaveLength(24);
  });

  it('are a group: one after another is one of them', () => {
    const all = of(3, [0, 90]);
    const p = { x: 1, y: 2.5 };
    for (const first of all)
      for (const second of all) {
        const image = transformPoint(second, transformPoint(first, p));
        expect(all.filter((each) => near(transformPoint(each, p), image))).toHaveLength(1);
      }
  });

  it('mirror across the axes that were chosen', () => {
    const at = (transform: Transform, x: number, y: number) => transformPoint(transform, { x, y });
    expect(at(mirrorAcross(90, middle), 1, 2)).toEqual({ x: 7, y: 2 });
    expect(at(mirrorAcross(0, middle), 1, 2)).toEqual({ x: 1, y: 6 });
    // Rising to the right, through 0, 8 and 8, 0.
    expect(at(mirrorAcross(45, middle), 0, 0)).toEqual({ x: 8, y: 8 });
    expect(at(mirrorAcross(135, middle), 1, 2)).toEqual({ x: 2, y: 1 });
    expect(determinant(mirrorAcross(17, middle))).toBeCloseTo(-1, 12);
  });

  it('are not too many', () => {
    expect(transformsOf({ turns: 8, mirrors: [0, 1] }, middle)).toMatchObject({ ok: false });
    expect(transformsOf({ turns: 1, mirrors: [NaN, 1] }, middle).ok).toBe(false);
    expect(transformsOf({ turns: 1, mirrors: [NaN] }, middle).ok).toBe(false);
  });
});

describe('drawing with a symmetry', () => {
  const at = (x: number, y: number) => ({ at: { x, y } });

  it('makes a sawtooth star of four lines, and four-fold turning', () => {
    // Corners of 2 in: two long lines give the nine squares, two short ones the points.
    const turned: Symmetry = { turns: 4, mirrors: [] };
    const lines = [
      [at(2, 0), at(2, 8)],
      [at(2, 0), at(4, 2)],
      [at(4, 2), at(6, 0)],
    ] as const;
    const star = lines.reduce((drawing, [a, b]) => must(addSymmetric(drawing, a, b, turned)), block);
    expect(must(arrange(star)).patches).toHaveLength(17);
    expect(must(arrange(star)).findings).toEqual([]);
    expectSound(star);
  });

  it('makes one of images that coincide or overlap', () => {
    const across = must(addSymmetric(block, at(0, 4), at(8, 4), { turns: 4, mirrors: [0] }));
    expect(splitsOf(across)).toEqual([
      [4, 0, 4, 8],
      [0, 4, 8, 4],
    ]);
    const overlapping = must(addSymmetric(block, at(1, 4), at(5, 4), { turns: 2, mirrors: [] }));
    expect(splitsOf(overlapping)).toEqual([[1, 4, 7, 4]]);
  });

  it('puts ends that are next to an axis or to the centre there', () => {
    const drawing = must(addSymmetric(block, at(0, 0), at(4.01, 3.99), { turns: 4, mirrors: [] }));
    expect(splitsOf(drawing)).toEqual([
      [0, 0, 4, 4],
      [8, 0, 4, 4],
      [4, 4, 0, 8],
      [4, 4, 8, 8],
    ]);
    expect(Object.keys(drawing.points)).toHaveLength(5);
  });

  it('cuts off what lies outside the block', () => {
    const oblong = must(rectangle(8, 4));
    expect(splitsOf(must(addSymmetric(oblong, at(0, 1), at(8, 1), { turns: 4, mirrors: [] })))).toEqual([
      [3, 0, 3, 4],
      [5, 0, 5, 4],
      [0, 1, 8, 1],
      [0, 3, 8, 3],
    ]);
  });

  it('lets ends run before they are repeated', () => {
    const drawing = must(addSymmetric(block, at(1, 2), at(3, 2), { turns: 1, mirrors: [0] }, 'run'));
    expect(splitsOf(drawing)).toEqual([
      [0, 2, 8, 2],
      [0, 6, 8, 6],
    ]);
  });

  it('is plain drawing without one', () => {
    expect(splitsOf(must(addSymmetric(block, at(0, 2), at(8, 2), NO_SYMMETRY)))).toEqual([[0, 2, 8, 2]]);
    expect(addSymmetric(block, at(1, 1), at(1, 1), { turns: 2, mirrors: [] }).ok).toBe(false);
  });

  it('lets images run to the edge where the outline has not the symmetry', () => {
    const eight: Symmetry = { turns: 8, mirrors: [] };
    const loose = (drawing: Drawing) =>
      Object.values(drawing.points).filter(({ id, on }) => on === undefined && !drawing.outline.includes(id));
    const run = must(addSymmetric(block, at(4, 0), at(8, 8), eight, 'run'));
    expect(loose(run)).toEqual([]);
    expect(run.splits.length).toBe(8);
    expect(loose(must(addSymmetric(block, at(4, 0), at(8, 8), eight, 'held')))).not.toEqual([]);
    // What is seen beforehand is what is drawn: every end of an image is an end in the drawing.
    const images = imagesOf(block, eight, { a: { x: 4, y: 0 }, b: { x: 8, y: 8 } }, 'run');
    const ends = images.flatMap(({ a, b }) => [a, b]);
    expect(ends.every((end) => Object.values(run.points).some((p) => near(p, end)))).toBe(true);
  });

  it('shows the images beforehand', () => {
    const images = imagesOf(block, { turns: 4, mirrors: [] }, { a: { x: 0, y: 0 }, b: { x: 4, y: 2 } });
    expect(images.map(({ b }) => [b.x, b.y])).toEqual([
      [4, 2],
      [6, 4],
      [4, 6],
      [2, 4],
    ]);
  });
});

describe('moving with a symmetry', () => {
  const mirrored: Symmetry = { turns: 1, mirrors: [90] };
  const roof = withLines(block, [1, 4, 4, 1], [7, 4, 4, 1]);

  it('keeps a point on the axis, and moves the images', () => {
    const ridge = must(
      movePointsSymmetric(roof, new Map([[pointAt(roof, 4, 1), { at: { x: 4.6, y: 2 } }]]), mirrored),
    );
    expect(splitsOf(ridge)).toEqual([
      [4, 2, 1, 4],
      [4, 2, 7, 4],
    ]);
    const eaves = must(
      movePointsSymmetric(
        roof,
        new Map([[pointAt(roof, 1, 4), { at: { x: 0, y: 5 }, on: ['edge:p4'] }]]),
        mirrored,
      ),
    );
    expect(splitsOf(eaves)).toEqual([
      [4, 1, 0, 5],
      [4, 1, 8, 5],
    ]);
    expect(eaves.points[pointAt(eaves, 8, 5)]!.on).toEqual(['edge:p2']);
  });

  it('moves a line and its images', () => {
    const posts = withLines(block, [2, 0, 2, 8], [6, 0, 6, 8]);
    const moved = must(moveLineSymmetric(posts, lineBetween(posts, 2, 0, 2, 8), 1, mirrored));
    expect(splitsOf(moved)).toEqual([
      [1, 0, 1, 8],
      [7, 0, 7, 8],
    ]);
    const spine = withLines(block, [4, 0, 4, 8]);
    expect(moveLineSymmetric(spine, spine.splits[0]!.id, 1, mirrored)).toMatchObject({
      problem: { what: expect.stringMatching(/axis/) },
    });
  });

  it('keeps what turns about the middle turning: lines that end on each other in a ring', () => {
    const turned: Symmetry = { turns: 4, mirrors: [] };
    const start = { at: { x: 3, y: 0 }, on: ['edge:p1'] };
    const ring = must(addSymmetric(block, start, { at: { x: 3, y: 5 } }, turned));
    const moved = must(
      movePointsSymmetric(
        ring,
        new Map([[pointAt(ring, 3, 0), { at: { x: 2, y: 0 }, on: ['edge:p1'] }]]),
        turned,
      ),
    );
    expectSymmetric(moved, turned, middle);
    expect(drawnLines(moved).size).toBe(8);
  });

  it('finds the images of parts', () => {
    const images = withImages(
      roof,
      { points: [pointAt(roof, 1, 4)], lines: [lineBetween(roof, 7, 4, 4, 1)] },
      mirrored,
    );
    expect(images.points).toEqual([pointAt(roof, 1, 4), pointAt(roof, 7, 4)]);
    expect(images.lines).toHaveLength(2);
  });
});
