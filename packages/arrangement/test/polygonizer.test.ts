import {
  distance,
  distanceToSegment,
  lerp,
  type Point,
  type Segment,
  segmentCrossing,
} from '@seamwright/geometry';
import WKTReader from 'jsts/org/locationtech/jts/io/WKTReader.js';
import Polygonizer from 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';
import { describe, expect, it } from 'vitest';
import { arranged, onBoundary, rectangle, seeded } from './drawings.ts';

/**
 * Outside check: the faces of the JTS polygonizer (jsts 2.12.1: noding by UnaryUnionOp, then Polygonizer) on the same
 * random drawings: same number, same areas.
 */
function polygonizerAreas(outline: readonly Point[], segments: readonly Segment[]): number[] {
  const ring = [...outline, outline[0]!].map(({ x, y }) => `${x} ${y}`).join(', ');
  const lines = segments.map(({ a, b }) => `(${a.x} ${a.y}, ${b.x} ${b.y})`);
  const reader = new WKTReader();
  const noded = UnaryUnionOp.union(reader.read(`MULTILINESTRING((${ring}), ${lines.join(', ')})`));
  const polygonizer = new Polygonizer();
  polygonizer.add(noded);
  return polygonizer
    .getPolygons()
    .toArray()
    .map((polygon) => polygon.getArea())
    .sort((a, b) => a - b);
}

/** Inches. Nearer than this, ours takes for one point what the polygonizer keeps apart, and is meant to. */
const APART = 0.05;

/**
 * Chords between sides of a convex outline in general position: ends, corners and crossings no nearer than
 * {@link APART} to each other and to lines that do not pass through them, so that both programs must see the same.
 */
function chords(outline: readonly Point[], count: number, random: () => number): Segment[] {
  const chosen: Segment[] = [];
  const places: Point[] = [...outline];
  while (chosen.length < count) {
    const shares = [random(), random()];
    const sides = shares.map((s) => Math.floor(s * outline.length));
    if (sides[0] === sides[1]) continue;
    const [a, b] = [onBoundary(outline, shares[0]!), onBoundary(outline, shares[1]!)];
    if (places.some((p) => distanceToSegment(p, a, b) < APART)) continue;
    const crossings = chosen.flatMap((c) => segmentCrossing(a, b, c.a, c.b)?.at ?? []);
    const fresh = [a, b, ...crossings];
    const tooNear = (p: Point, i: number) =>
      [...places, ...fresh.slice(0, i)].some((q) => distance(p, q) < APART) ||
      chosen.filter((c) => distanceToSegment(p, c.a, c.b) < APART).length > (i < 2 ? 0 : 1);
    if (fresh.some(tooNear)) continue;
    chosen.push({ a, b });
    places.push(...fresh);
  }
  return chosen;
}

/**
 * The same chord with its ends a little outside: rounded ends on a slanting side are not on it for the polygonizer.
 * Ends are APART, so the tails do not meet each other.
 */
function lengthened({ a, b }: Segment): Segment {
  const tail = APART / 5 / distance(a, b);
  return { a: lerp(a, b, -tail), b: lerp(a, b, 1 + tail) };
}

const OUTLINES: Record<string, readonly Point[]> = {
  square: rectangle(12, 12),
  oblong: rectangle(20, 7),
  hexagon: Array.from({ length: 6 }, (_, k) => ({
    x: 10 + 10 * Math.cos((k * Math.PI) / 3),
    y: 10 + 10 * Math.sin((k * Math.PI) / 3),
  })),
  house: [
    { x: 0, y: 8 },
    { x: 8, y: 0 },
    { x: 16, y: 8 },
    { x: 16, y: 20 },
    { x: 0, y: 20 },
  ],
};

describe('the same faces as the JTS polygonizer', () => {
  for (const [name, outline] of Object.entries(OUTLINES)) {
    for (const count of [3, 8, 20]) {
      it(`${count} chords of a ${name}, 40 drawings`, () => {
        for (let seed = 0; seed < 40; seed += 1) {
          const segments = chords(outline, count, seeded(1000 * count + seed));
          const expected = polygonizerAreas(outline, segments.map(lengthened));
          const block = arranged(outline, segments);
          const actual = block.patches.map(({ area }) => area).sort((a, b) => a - b);
          expect(actual, `seed ${seed}`).toHaveLength(expected.length);
          expect(expected.length).toBeGreaterThan(count);
          actual.forEach((area, i) => {
            expect(Math.abs(area - expected[i]!), `seed ${seed}, face ${i}`).toBeLessThan(1e-9);
          });
          expect(block.findings).toEqual([]);
        }
      });
    }
  }
});
