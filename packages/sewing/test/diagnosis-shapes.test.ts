import {
  type Arrangement,
  arrange,
  drawingFromSegments,
  type Finding,
  plainWords,
} from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { SHAPE_LIMITS, type ShapeLimits, shapeFindings } from '../src/index.ts';
import { knownDrawings } from './read-drawings.ts';

const square = (size: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: size, y: 0 },
  { x: size, y: size },
  { x: 0, y: size },
];

const l = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

function arranged(segments: readonly Segment[], outline = square(12)): Arrangement {
  const result = arrange(drawingFromSegments(outline, segments));
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}

const told = (
  segments: readonly Segment[],
  limits?: Partial<ShapeLimits>,
  outline = square(12),
): Finding[] => [...shapeFindings(arranged(segments, outline), { ...SHAPE_LIMITS, ...limits })];

const kinds = (findings: readonly Finding[]) => findings.map(({ kind }) => kind);

describe('slivers', () => {
  const strip = (width: number) => [l(0, 6, 12, 6), l(0, 6 + width, 12, 6 + width)];

  it('a strip narrower than 1/8 in, not one of 1/8 in', () => {
    expect(kinds(told(strip(0.1)))).toEqual(['sliver']);
    expect(plainWords(told(strip(0.1))[0]!.message)).toContain('0.1 in wide at (6, 6.05)');
    expect(told(strip(1 / 8))).toEqual([]);
    expect(kinds(told(strip(1 / 8), { narrowest: 1 / 4 }))).toEqual(['sliver']);
    expect(told(strip(0.1), { narrowest: 0 })).toEqual([]);
  });

  it('anywhere on the block, turned any way', () => {
    for (let degrees = 0; degrees < 180; degrees += 7) {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const line = (off: number) =>
        l(6 - 20 * c - off * s, 6 - 20 * s + off * c, 6 + 20 * c - off * s, 6 + 20 * s + off * c);
      const sharp = { sharpest: 0 };
      expect(kinds(told([line(0), line(0.11)], sharp)), `${degrees}°`).toEqual(['sliver']);
      expect(told([line(0), line(0.14)], sharp), `${degrees}°`).toEqual([]);
    }
  });

  it('not the tips of ordinary triangles, nor tips that are cut off', () => {
    expect(told([l(0, 0, 12, 12), l(0, 12, 12, 0)])).toEqual([]);
    expect(told([l(0, 0, 12, 6)])).toEqual([]);
    // The tip of 27° is cut off where it is 0.1 in wide: too small a piece, but what is left has no narrow place.
    const cut = arranged([l(0, 0, 12, 6), l(0.2, 0, 0.2, 0.1)]);
    const tip = cut.patches.findIndex(({ area }) => area < 0.02);
    expect(shapeFindings(cut).map(({ kind, patches }) => [kind, patches])).toEqual([['sliver', [tip]]]);
  });

  it('a triangle that is thin all over', () => {
    const findings = told([l(0, 6, 12, 6.5), l(0, 6, 12, 6.4)], { sharpest: 0 });
    expect(kinds(findings)).toEqual(['sliver']);
  });

  it('a waist, where a corner comes near the other side', () => {
    const findings = told([l(0, 4, 6, 5.95), l(6, 5.95, 12, 4), l(0, 6, 12, 6)]);
    expect(kinds(findings)).toEqual(['sliver']);
    expect(plainWords(findings[0]!.message)).toContain('0.05 in wide at (6, 5.975)');
  });

  it('the frame round an island', () => {
    const findings = told([l(0.1, 2, 8, 2), l(8, 2, 8, 8), l(8, 8, 0.1, 8), l(0.1, 8, 0.1, 2)]);
    expect(kinds(findings)).toEqual(['sliver']);
    expect(findings[0]!.at[0]!.x).toBeCloseTo(0.05, 9);
  });
});

describe('sharp points', () => {
  it('say the angle', () => {
    const findings = told([l(0, 0, 12, 2)]);
    expect(kinds(findings)).toEqual(['sharp-point']);
    // atan(2 / 12) = 9.46°
    expect(plainWords(findings[0]!.message)).toContain('9.5°');
    expect(findings[0]!.at).toEqual([{ x: 0, y: 0 }]);
    expect(told([l(0, 0, 12, 2)], { sharpest: 9 })).toEqual([]);
  });

  it('are told once for all patches that meet in one', () => {
    const star = (count: number) =>
      Array.from({ length: count }, (_, i) => {
        const angle = (2 * Math.PI * i) / count;
        return l(6, 6, 6 + 20 * Math.cos(angle), 6 + 20 * Math.sin(angle));
      });
    const findings = told(star(30));
    expect(kinds(findings)).toEqual(['sharp-point']);
    expect(findings[0]!.patches).toHaveLength(30);
    // Exactly 15° is not sharper than 15°.
    expect(told(star(24))).toEqual([]);
  });
});

describe('lines that nearly line up', () => {
  it('on either side of a line, at most 1/8 in apart', () => {
    const jog = (off: number) => [l(0, 6, 12, 6), l(4, 0, 4, 6), l(4 + off, 6, 4 + off, 12)];
    const findings = told(jog(0.06));
    expect(kinds(findings)).toEqual(['near-line-up']);
    expect(plainWords(findings[0]!.message)).toContain('miss each other by 0.06 in');
    expect(findings[0]!.lines).toEqual(['s2', 's3']);
    expect(told(jog(0))).toEqual([]);
    expect(told(jog(0.2))).toEqual([]);
  });

  it('with a bend of at most 3° where they meet', () => {
    const bend = (rise: number) => [l(0, 6, 6, 6 + rise), l(6, 6 + rise, 12, 6)];
    expect(kinds(told(bend(0.1)))).toEqual(['near-line-up']);
    // 2 atan(0.1 / 6) = 1.91°
    expect(plainWords(told(bend(0.1))[0]!.message)).toContain('1.9°');
    expect(told(bend(0.2))).toEqual([]);
    // Within the sewer's 1/128 in they are one line.
    expect(told(bend(1 / 256))).toEqual([]);
  });

  it('not on the same side, nor at another angle', () => {
    expect(told([l(0, 6, 12, 6), l(4, 0, 4, 6), l(4.1, 6, 9, 12)])).toEqual([]);
    expect(kinds(told([l(0, 6, 12, 6), l(4, 0, 4, 6), l(4.1, 0, 4.1, 6)]))).toEqual(['sliver']);
  });
});

describe('small patches', () => {
  const corner = [l(0, 1, 1, 1), l(1, 0, 1, 1)];

  it('only where the maker has a least size, at the smallest size to be printed', () => {
    expect(told(corner)).toEqual([]);
    expect(told(corner, { leastSize: 0.9 })).toEqual([]);
    const findings = told(corner, { leastSize: 0.9, smallestScale: 0.5 });
    expect(kinds(findings)).toEqual(['small-patch']);
    expect(plainWords(findings[0]!.message)).toMatch(/is 0\.50\d in across/);
  });

  it('are measured by the largest circle in them', () => {
    // The circle in a half-square triangle of side 1 is 2 − √2 wide.
    const triangle = [l(0, 1, 1, 0)];
    expect(told(triangle, { leastSize: 2 - Math.SQRT2 - 0.001 })).toEqual([]);
    expect(kinds(told(triangle, { leastSize: 2 - Math.SQRT2 + 0.001 }))).toEqual(['small-patch']);
  });
});

it('known drawings are told nothing that is not so', () => {
  const findings = knownDrawings().flatMap(({ name, outline, segments }) =>
    shapeFindings(arranged(segments, outline)).map(({ kind }) => `${name}: ${kind}`),
  );
  expect(findings).toEqual(['sloppy-03: sharp-point', 'sloppy-03: sharp-point']);
});
