import { arrange } from '@seamwright/arrangement';
import type { Polygon, Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { touching as touchingOf } from '../src/contact.ts';
import { crossingsOf } from '../src/crossings.ts';
import { isOneFoundation } from '../src/peel.ts';
import type { Region } from '../src/region.ts';
import { type Known, Regions } from '../src/regions.ts';
import { Search } from '../src/search.ts';
import { NO_WILL } from '../src/will.ts';
import { familyDrawing, KINDS } from './brute-force-drawings.ts';
import { drawingOf } from './read-drawings.ts';

const NO_END = Number.POSITIVE_INFINITY;

/** Every region that cuts of a block lead to, with the fewest foundations it takes: all cuts compared, nothing left out. */
function everyRegion(outline: Polygon, segments: readonly Segment[]) {
  const arranged = arrange(drawingOf({ outline, segments }));
  if (!arranged.ok) throw new Error(arranged.problem.what);
  const arrangement = arranged.value;
  const touching = touchingOf(arrangement);
  const crossings = crossingsOf(arrangement);
  const regions = new Regions(touching, crossings, NO_WILL, () => undefined);
  const fewest = new Map<Known, number>();
  const promised = new Map<Known, number>();
  const fewestOf = (known: Known): number => {
    let least = fewest.get(known);
    if (least === undefined) {
      promised.set(known, known.alike.promise);
      least = isOneFoundation(touching, known.region) ? 1 : NO_END;
      if (least !== 1) {
        for (const { parts } of regions.cutsOf(known))
          least = Math.min(least, fewestOf(parts[0]) + fewestOf(parts[1]));
      }
      fewest.set(known, least);
    }
    return least;
  };
  const all: Region = arrangement.patches.map(({ index }) => index);
  fewestOf(regions.get(all));
  return { arrangement, touching, crossings, all, regions, fewest, promised };
}

const line = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

const square = (size: number): Polygon => [
  { x: 0, y: 0 },
  { x: size, y: 0 },
  { x: size, y: size },
  { x: 0, y: size },
];

/** The same tile four times, two by two, turned by a quarter each time round where `turned` says so. */
function fourTimes(size: number, tile: readonly Segment[], turned = false): [Polygon, Segment[]] {
  const places = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  const segments = places.flatMap(([i, j], turns) =>
    tile.map(({ a, b }) => {
      const place = ({ x, y }: { x: number; y: number }) => {
        let [u, v] = [x, y];
        for (let k = 0; turned && k < turns; k += 1) [u, v] = [size - v, u];
        return { x: u + i * size, y: v + j * size };
      };
      return { a: place(a), b: place(b) };
    }),
  );
  const between = [line(size, 0, size, 2 * size), line(0, size, 2 * size, size)];
  return [square(2 * size), [...between, ...segments]];
}

const hourglass = [line(0, 0, 2, 2), line(2, 0, 0, 2)];
const ninePatch = [1, 2].flatMap((v) => [line(v, 0, v, 3), line(0, v, 3, v)]);
const logs = [line(1, 0, 1, 3), line(1, 1, 3, 1), line(2, 1, 2, 3), line(1, 2, 2, 2)];
const stairs = [line(0, 1, 3, 1), line(1, 1, 1, 3), line(2, 0, 2, 1), line(1, 2, 3, 2)];

const BLOCKS: Readonly<Record<string, [Polygon, Segment[]]>> = {
  hourglasses: fourTimes(2, hourglass),
  'nine-patches': fourTimes(3, ninePatch),
  'log cabins': fourTimes(3, logs),
  'log cabins, turned': fourTimes(3, logs, true),
  stairs: fourTimes(3, stairs),
  'stairs, turned': fourTimes(3, stairs, true),
};

const SEEDS = Array.from({ length: 60 }, (_, seed) => seed);

const drawings = [
  ...Object.entries(BLOCKS).map(([name, [outline, segments]]) => ({ name, outline, segments })),
  ...KINDS.flatMap((kind) =>
    SEEDS.map((seed) => ({ name: `${kind} ${seed}`, ...familyDrawing(kind, seed) })),
  ),
];

describe('what shortens the search loses nothing', () => {
  const explored = drawings.map(({ name, outline, segments }) => ({
    name,
    ...everyRegion(outline, segments),
  }));

  it('finds as few foundations as comparing all cuts of all regions does', () => {
    for (const { name, touching, crossings, all, regions, fewest } of explored) {
      const least = fewest.get(regions.get(all))!;
      if (least === NO_END) continue;
      const search = new Search(touching, crossings, NO_WILL, NO_END);
      const { assembly, atLeast } = search.fewest(all, search.anyAssembly(all));
      expect([name, assembly.foundations, atLeast]).toEqual([name, least, least]);
    }
  });

  it('never promises more foundations than fewest there are', () => {
    let sharp = 0;
    for (const { name, fewest, promised } of explored) {
      for (const [known, least] of fewest) {
        expect(promised.get(known), `${name}: ${known.region}`).toBeLessThanOrEqual(least);
        if (known.region.length > 2 && promised.get(known) === least && least > 2) sharp += 1;
      }
    }
    expect(sharp).toBeGreaterThan(100);
  });

  it('takes a cut for safe only where no other leads to fewer foundations', () => {
    let safe = 0;
    for (const { name, fewest } of explored) {
      for (const [known, least] of fewest) {
        for (const { parts, costsNothing } of known.cuts ?? []) {
          if (!costsNothing) continue;
          safe += 1;
          expect(fewest.get(parts[0])! + fewest.get(parts[1])!, `${name}: ${known.region}`).toBe(least);
        }
      }
    }
    expect(safe).toBeGreaterThan(100);
  });

  it('takes regions for alike only where they need as many foundations', () => {
    let shared = 0;
    for (const { name, fewest } of explored) {
      for (const [known, least] of fewest) {
        const { example } = known.alike;
        if (example === known) continue;
        shared += 1;
        expect(fewest.get(example), `${name}: ${known.region} like ${example.region}`).toBe(least);
      }
    }
    expect(shared).toBeGreaterThan(1000);
  });
});

describe('regions that are alike', () => {
  /** A block of two tiles side by side, and the patches of each. */
  function twoTiles(left: readonly Segment[], right: readonly Segment[]) {
    const moved = right.map(({ a, b }) => line(a.x + 3, a.y, b.x + 3, b.y));
    const { regions, arrangement } = everyRegion(
      [
        { x: 0, y: 0 },
        { x: 6, y: 0 },
        { x: 6, y: 3 },
        { x: 0, y: 3 },
      ],
      [line(3, 0, 3, 3), ...left, ...moved],
    );
    const within = (from: number, to: number) =>
      arrangement.patches.filter(({ heart: { x } }) => from < x && x < to).map(({ index }) => index);
    return [regions.get(within(0, 3)), regions.get(within(3, 6))] as const;
  }
  const mirrored = (tile: readonly Segment[]) => tile.map(({ a, b }) => line(3 - a.x, a.y, 3 - b.x, b.y));
  const upright = (tile: readonly Segment[]) => tile.map(({ a, b }) => line(a.y, 3 - a.x, b.y, 3 - b.x));

  it('are the same tile, moved, turned or mirrored', () => {
    for (const tile of [stairs, logs]) {
      for (const copy of [tile, mirrored(tile), upright(tile), mirrored(upright(tile))]) {
        const [a, b] = twoTiles(tile, copy);
        expect(a.alike).toBe(b.alike);
      }
    }
  });

  it('are not tiles that differ in where seams end, however many patches touch', () => {
    const [a, b] = twoTiles(stairs, [line(0, 1, 3, 1), line(1, 1, 1, 3), line(2, 1, 2, 3), line(1, 0, 1, 1)]);
    expect(a.alike).not.toBe(b.alike);
    // A four-patch has a crossing where two halves set off against each other have none.
    const [c, d] = twoTiles(
      [line(0, 1, 3, 1), line(1, 0, 1, 3)],
      [line(0, 1, 3, 1), line(1, 0, 1, 1), line(2, 1, 2, 3)],
    );
    expect(c.alike).not.toBe(d.alike);
  });
});
