import { inverse, type Point, type Transform, transformPoint } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSvgDrawing } from './read-svg.ts';

/** Inches in one of each unit. Source: W3C CSS Values, "absolute lengths". */
const UNITS = { in: 1, cm: 1 / 2.54, mm: 1 / 25.4, pt: 1 / 72, pc: 1 / 6, px: 1 / 96 };

const OUTLINE = [
  { x: 0, y: 2 },
  { x: 4, y: 0 },
  { x: 8, y: 2 },
  { x: 8, y: 9 },
  { x: 0, y: 9 },
];

/** Lines whose ends all lie apart, so that none is left out as a repeat of another. */
const lines: fc.Arbitrary<[Point, Point][]> = fc
  .uniqueArray(fc.tuple(fc.integer({ min: -200, max: 1000 }), fc.integer({ min: -200, max: 1100 })), {
    minLength: 2,
    maxLength: 12,
    selector: ([x, y]) => `${x} ${y}`,
  })
  .map((places) => {
    const points = places.map(([x, y]) => ({ x: x / 100, y: y / 100 }));
    return points.flatMap((p, i) => (i % 2 === 1 ? [[points[i - 1]!, p] as [Point, Point]] : []));
  });

/** Turned, sheared and stretched, but never flat. */
const transform: fc.Arbitrary<Transform> = fc
  .record({
    a: fc.double({ min: 0.5, max: 2, noNaN: true }),
    b: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
    c: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
    d: fc.double({ min: -2, max: -0.5, noNaN: true }),
    e: fc.double({ min: -50, max: 50, noNaN: true }),
    f: fc.double({ min: -50, max: 50, noNaN: true }),
  })
  .map((t) => t as Transform);

describe('reading an SVG drawing', () => {
  it('gives the same block whatever the unit, the viewBox, the transform and the element', () => {
    const unit = fc.constantFrom(...(Object.keys(UNITS) as (keyof typeof UNITS)[]));
    const corner = { minX: fc.integer({ min: -500, max: 500 }), minY: fc.integer({ min: -500, max: 500 }) };
    const scale = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        lines,
        unit,
        fc.record({ ...corner, scale }),
        transform,
        fc.constantFrom('line', 'polyline', 'path'),
        (ends, unitName, view, moved, element) => {
          const back = inverse(moved);
          // From inches to what is written in the file: first to user units, then against the group's transform.
          const written = (p: Point) => {
            const user = { x: p.x * view.scale + view.minX, y: p.y * view.scale + view.minY };
            return transformPoint(back, user);
          };
          const pair = (p: Point) => `${written(p).x} ${written(p).y}`;
          const lineTo = ([p, q]: readonly [Point, Point]) => {
            const [from, to] = [written(p), written(q)];
            if (element === 'line') return `<line x1="${from.x}" y1="${from.y}" x2="${to.x}" y2="${to.y}"/>`;
            if (element === 'polyline') return `<polyline points="${pair(p)} ${pair(q)}"/>`;
            return `<path d="M${pair(p)} L${pair(q)}"/>`;
          };
          const size = (inches: number) => `${inches / UNITS[unitName]}${unitName}`;
          const { a, b, c, d, e, f } = moved;
          const text = `<svg xmlns="http://www.w3.org/2000/svg" width="${size(8)}" height="${size(9)}" viewBox="${view.minX} ${view.minY} ${8 * view.scale} ${9 * view.scale}">
            <g transform="matrix(${a} ${b} ${c} ${d} ${e} ${f})">
              <polygon points="${OUTLINE.map(pair).join(' ')}"/>
              ${ends.map(lineTo).join('\n')}
            </g></svg>`;

          const read = readSvgDrawing(text);
          if (!read.ok) throw new Error(read.problem.what);
          const { drawing, findings } = read.value;
          const at = (id: string) => drawing.points[id]!;
          const near = (got: Point, want: Point) => Math.hypot(got.x - want.x, got.y - want.y) < 1e-7;
          expect(findings).toEqual([]);
          expect(drawing.outline.every((id, i) => near(at(id), OUTLINE[i]!))).toBe(true);
          expect(drawing.splits).toHaveLength(ends.length);
          drawing.splits.forEach(({ from, to }, i) => {
            expect(near(at(from), ends[i]![0])).toBe(true);
            expect(near(at(to), ends[i]![1])).toBe(true);
          });
        },
      ),
      { seed: 46, numRuns: 300 },
    );
  });

  it.each([
    ['meet', 2],
    ['xMinYMax slice', 4],
    ['none', 4],
  ])('fits the viewBox as preserveAspectRatio="%s" says', (fit, width) => {
    const text = `<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="2in" viewBox="0 0 1 1" preserveAspectRatio="${fit === 'meet' ? 'xMidYMid meet' : fit}"><rect width="1" height="1"/></svg>`;
    const read = readSvgDrawing(text);
    if (!read.ok) throw new Error(read.problem.what);
    const xs = Object.values(read.value.drawing.points).map(({ x }) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(width, 12);
  });
});
