import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { point, share } from '../test/arbitraries.ts';
import type { Point } from './point.ts';
import { areaOfTurn, between, turn } from './predicates.ts';
import { cross, subtract } from './vector.ts';

/** A double as a whole number times 2^-1074: every double is one, so whole-number arithmetic is exact. */
function units(value: number): bigint {
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  const high = bits.getUint32(0);
  const exponent = (high >>> 20) & 0x7ff;
  const fraction = (BigInt(high & 0xfffff) << 32n) | BigInt(bits.getUint32(4));
  const size = exponent === 0 ? fraction : (fraction | (1n << 52n)) << BigInt(exponent - 1);
  return high >>> 31 === 1 ? -size : size;
}

/** Independent of the library: exact whole numbers. */
function exactTurn(a: Point, b: Point, c: Point): number {
  const [ax, ay, bx, by, cx, cy] = [a.x, a.y, b.x, b.y, c.x, c.y].map(units) as [
    bigint,
    bigint,
    bigint,
    bigint,
    bigint,
    bigint,
  ];
  const doubled = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  return doubled > 0n ? 1 : doubled < 0n ? -1 : 0;
}

describe('turn', () => {
  test('is +1 clockwise on the screen: right, then down', () => {
    expect(turn({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 })).toBe(1);
    expect(turn({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: -1 })).toBe(-1);
    expect(turn({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 7, y: 0 })).toBe(0);
  });

  // The sweep of Kettner, Mehlhorn, Pion, Schirra, Yap, Classroom examples of robustness problems in geometric
  // computations, Computational Geometry 40(1), 2008 (from memory): steps of one unit in the last place round a
  // point of a line, where a rounded cross product draws stripes of wrong signs.
  test.each([
    { at: 0.5, b: 12, c: 24 },
    { at: 0.5, b: 8.8, c: 12.1 },
    { at: 5.9, b: 17.3, c: 24.6 },
  ])('is exact for near-collinear points round ($at, $at)', ({ at, b, c }) => {
    const step = at < 1 ? 2 ** -53 : 2 ** -50;
    let roundedWrong = 0;
    for (let i = 0; i < 64; i++) {
      for (let j = 0; j < 64; j++) {
        const p = { x: at + i * step, y: at + j * step };
        const q = { x: b, y: b };
        const r = { x: c, y: c };
        const exact = exactTurn(p, q, r);
        expect(turn(p, q, r)).toBe(exact);
        expect(turn(q, p, r)).toBe(-exact || 0);
        expect(turn(q, r, p)).toBe(exact);
        expect(Math.sign(areaOfTurn(p, q, r))).toBe(exact);
        if (Math.sign(cross(subtract(q, p), subtract(r, p))) !== exact) roundedWrong++;
      }
    }
    // The sweep is hard enough: without the predicate it goes wrong.
    expect(roundedWrong).toBeGreaterThan(0);
  });

  test('agrees with whole-number arithmetic on random and on nearly collinear points', () => {
    fc.assert(
      fc.property(point, point, share, point, (a, b, t, other) => {
        const near = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
        expect(turn(a, b, near)).toBe(exactTurn(a, b, near));
        expect(turn(a, b, other)).toBe(exactTurn(a, b, other));
      }),
      { seed: 2, numRuns: 2000 },
    );
  });
});

test('between includes the ends and excludes what lies beyond', () => {
  const a = { x: 0, y: 3 };
  const b = { x: 2, y: 1 };
  expect([a, b, { x: 1, y: 2 }].map((p) => between(a, b, p))).toEqual([true, true, true]);
  expect(between(a, b, { x: 3, y: 0 })).toBe(false);
});
