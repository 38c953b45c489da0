import { distance, type Point, transformPoint } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitPicture,
  movePicture,
  type PictureSize,
  pictureBox,
  pictureToBlock,
  pixelAt,
  scaleByTwo,
  straighten,
  stretchPicture,
  turnPicture,
  widenPicture,
} from './placement.ts';
import type { PicturePlace } from './tracing.ts';

/** Pixels: slender ones, too. */
const side = fc.integer({ min: 100, max: 2400 });
const size = fc.record({ width: side, height: side });
const inches = fc.double({ min: -30, max: 30, noNaN: true });
const place: fc.Arbitrary<PicturePlace> = fc.record({
  x: inches,
  y: inches,
  width: fc.double({ min: 0.5, max: 60, noNaN: true }),
  turn: fc.double({ min: -179.9, max: 180, noNaN: true }),
});
const share = fc.double({ min: 0, max: 1, noNaN: true });
const share2 = fc.record({ x: share, y: share });
/** Two places of the picture. */
const twoOf = (of: PictureSize, [a, b]: readonly [Point, Point]): [Point<'picture'>, Point<'picture'>] => [
  { x: a.x * of.width, y: a.y * of.height },
  { x: b.x * of.width, y: b.y * of.height },
];
const two = fc.tuple(share2, share2);

const made = <T>(result: { ok: true; value: T } | { ok: false }): T => {
  if (!result.ok) throw new Error('refused');
  return result.value;
};

describe('where a picture lies', () => {
  it('is told by its corners: turned a quarter anticlockwise, the top left one is at the lower left', () => {
    const at = { x: 3, y: 4, width: 2, turn: 90 };
    const corner = transformPoint(pictureToBlock(at, { width: 200, height: 100 }), { x: 0, y: 0 });
    // By hand: 1 in left and ½ in above the middle becomes ½ in left of it and 1 in below.
    expect(corner.x).toBeCloseTo(2.5, 12);
    expect(corner.y).toBeCloseTo(5, 12);
  });

  it('gives back the pixel that lies at a place', () => {
    fc.assert(
      fc.property(place, size, two, (at, of, shares) => {
        const [one] = twoOf(of, shares);
        const back = pixelAt(at, of, transformPoint(pictureToBlock(at, of), one));
        expect(distance(back, one)).toBeLessThan(1e-6);
      }),
      { seed: 61 },
    );
  });

  it('fits a box, touching it on two sides, and never beyond', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1, max: 120, noNaN: true }), (of, high) => {
        // Others are as narrow as pictures may be: see below.
        fc.pre((high * of.width) / of.height >= 1 / 16);
        const box = pictureBox(fitPicture(of, { minX: 0, minY: 0, maxX: 6, maxY: high }), of);
        const [wide, tall] = [box.maxX - box.minX, box.maxY - box.minY];
        expect(wide).toBeLessThanOrEqual(6 + 1e-9);
        expect(tall).toBeLessThanOrEqual(high + 1e-9);
        expect(Math.min(6 - wide, high - tall)).toBeLessThan(1e-9);
      }),
      { seed: 62 },
    );
  });

  it('is never narrower than a picture in a file may be, however slender it is', () => {
    // 6 in high it would be 1/400 in wide.
    expect(fitPicture({ width: 1, height: 2400 }, { minX: 0, minY: 0, maxX: 6, maxY: 6 }).width).toBe(1 / 16);
  });

  it('is the widest that a picture may be where it would be wider by less than what counts as different', () => {
    const at = { x: 3, y: 3, width: 6, turn: 0 };
    const across = [
      { x: 0, y: 10 },
      { x: 600, y: 10 },
    ] as const;
    expect(made(scaleByTwo(at, { width: 600, height: 600 }, across, 1200.000_000_5)).width).toBe(1200);
  });

  it('moves there and back to where it was', () => {
    fc.assert(
      fc.property(place, inches, inches, (at, dx, dy) => {
        const back = movePicture(movePicture(at, dx, dy), -dx, -dy);
        expect(distance(back, at)).toBeLessThan(1e-12);
        expect(back.width).toBe(at.width);
      }),
      { seed: 63 },
    );
  });

  it('keeps its top left when it gets another width', () => {
    fc.assert(
      fc.property(place, size, fc.double({ min: 0.5, max: 60, noNaN: true }), (at, of, width) => {
        const [before, after] = [pictureBox(at, of), pictureBox(widenPicture(at, of, width), of)];
        expect(after.minX).toBeCloseTo(before.minX, 8);
        expect(after.minY).toBeCloseTo(before.minY, 8);
      }),
      { seed: 64 },
    );
  });

  it('is turned to angles above −180° and at most 180°', () => {
    const at = { x: 0, y: 0, width: 1, turn: 0 };
    expect([190, -180, 180, 540, -90, 360].map((angle) => turnPicture(at, angle).turn)).toEqual([
      -170, 180, 180, 180, -90, 0,
    ]);
  });
});

describe('two points of a picture', () => {
  it('are put as far apart as they are known to be, and the first stays', () => {
    fc.assert(
      fc.property(
        place,
        size,
        two,
        fc.double({ min: 0.01, max: 40, noNaN: true }),
        (at, of, shares, apart) => {
          const two = twoOf(of, shares);
          const scaled = scaleByTwo(at, of, two, apart);
          fc.pre(scaled.ok);
          const [before, after] = [pictureToBlock(at, of), pictureToBlock(made(scaled), of)];
          const [a, b] = two.map((one) => transformPoint(after, one)) as [Point, Point];
          expect(Math.abs(distance(a, b) - apart)).toBeLessThan(1e-9);
          expect(distance(a, transformPoint(before, two[0]))).toBeLessThan(1e-8);
          expect(made(scaled).turn).toBe(at.turn);
        },
      ),
      { seed: 65 },
    );
  });

  it.each(['level', 'upright'] as const)('are made %s by turning no more than a quarter', (wanted) => {
    fc.assert(
      fc.property(place, size, two, (at, of, shares) => {
        const two = twoOf(of, shares);
        fc.pre(distance(...two) >= 1);
        const turned = made(straighten(at, of, two, wanted));
        const [before, after] = [at, turned].map((one) =>
          two.map((p) => transformPoint(pictureToBlock(one, of), p)),
        ) as [[Point, Point], [Point, Point]];
        const [a, b] = after;
        expect(Math.abs(wanted === 'level' ? a.y - b.y : a.x - b.x)).toBeLessThan(1e-8);
        expect(distance(a, b)).toBeCloseTo(distance(...before), 8);
        expect(a.x + b.x).toBeCloseTo(before[0].x + before[1].x, 7);
        expect(a.y + b.y).toBeCloseTo(before[0].y + before[1].y, 7);
        const by = Math.abs(turned.turn - at.turn);
        expect(Math.min(by, 360 - by)).toBeLessThanOrEqual(90 + 1e-9);
      }),
      { seed: 66 },
    );
  });

  it('that are one, or would make the picture miles wide, are refused', () => {
    const at = { x: 3, y: 3, width: 6, turn: 0 };
    const of = { width: 600, height: 600 };
    const one = { x: 10, y: 10 };
    expect(scaleByTwo(at, of, [one, { x: 10.5, y: 10 }], 2)).toMatchObject({
      problem: { what: 'The two points are one' },
    });
    expect(straighten(at, of, [one, one], 'level')).toMatchObject({ ok: false });
    expect(scaleByTwo(at, of, [one, { x: 12, y: 10 }], 100)).toMatchObject({
      problem: { what: 'The picture would become too small or too large to work with' },
    });
  });
});

it('a picture goes with its block when that is made larger or smaller alike, and back', () => {
  fc.assert(
    fc.property(place, size, two, fc.double({ min: 0.5, max: 4, noNaN: true }), (at, of, shares, k) => {
      const [one] = twoOf(of, shares);
      const box = { minX: 0, minY: 0, maxX: 6, maxY: 8 };
      const larger = { minX: 0, minY: 0, maxX: 6 * k, maxY: 8 * k };
      const stretched = stretchPicture(at, box, larger);
      const before = transformPoint(pictureToBlock(at, of), one);
      const after = transformPoint(pictureToBlock(stretched, of), one);
      expect(distance(after, { x: before.x * k, y: before.y * k })).toBeLessThan(1e-6);
      expect(distance(stretchPicture(stretched, larger, box), at)).toBeLessThan(1e-9);
    }),
    { seed: 67 },
  );
});
