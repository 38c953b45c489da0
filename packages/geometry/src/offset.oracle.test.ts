import WKTReader from 'jsts/org/locationtech/jts/io/WKTReader.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { describe, expect, test } from 'vitest';
import { convexPolygon, interiorAngles, randomNumbers, wildPolygon } from '../test/random-polygons.ts';
import { distanceToSegment } from './line.ts';
import { allowanceOutline } from './offset.ts';
import type { Point, Polygon } from './point.ts';
import { area, edgesOf } from './polygon.ts';
import { MITRE_REACH } from './tolerance.ts';
import { distance } from './vector.ts';

// Against the buffer of a reference library: jsts 2.12.1, a port of the JTS Topology Suite.

/** The outer ring and the holes of the library's mitred buffer, whose tips are never cut. */
function referenceBuffer(polygon: Polygon, allowance: number): { outer: Polygon; holes: readonly Polygon[] } {
  const parameters = new BufferParameters();
  parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
  parameters.setMitreLimit(1e6);
  // Without this it first straightens notches by up to a hundredth of the allowance.
  parameters.setSimplifyFactor(0);
  const ring = [...polygon, polygon[0]!].map(({ x, y }) => `${x} ${y}`).join(', ');
  const buffer = new BufferOp(new WKTReader().read(`POLYGON ((${ring}))`), parameters).getResultGeometry(
    allowance,
  );
  expect(buffer.getGeometryType()).toBe('Polygon');
  const open = (coordinates: { x: number; y: number }[]) =>
    coordinates.slice(0, -1).map(({ x, y }) => ({ x, y }));
  return {
    outer: open(buffer.getExteriorRing().getCoordinates()),
    holes: Array.from({ length: buffer.getNumInteriorRing() }, (_, n) =>
      open(buffer.getInteriorRingN(n).getCoordinates()),
    ),
  };
}

const distanceToRing = (p: Point, ring: Polygon): number =>
  Math.min(...edgesOf(ring).map(({ a, b }) => distanceToSegment(p, a, b)));

/** The greatest distance of a corner of either ring from the other: the Hausdorff distance of the two regions' rims. */
const apart = (one: Polygon, other: Polygon): number =>
  Math.max(...one.map((p) => distanceToRing(p, other)), ...other.map((p) => distanceToRing(p, one)));

const SHARPEST = (2 * Math.asin(1 / MITRE_REACH) * 180) / Math.PI;
const ALLOWANCES = [0.25, 0.375, 1];

describe('convex polygons', () => {
  test('the same outline and area, to rounding', () => {
    const random = randomNumbers(51);
    let compared = 0;
    while (compared < 500) {
      const polygon = convexPolygon(random);
      if (interiorAngles(polygon).some((angle) => angle < SHARPEST)) continue;
      const allowance = ALLOWANCES[compared % 3]!;
      const { outline, cuts } = allowanceOutline(polygon, allowance);
      const { outer, holes } = referenceBuffer(polygon, allowance);
      expect(cuts).toHaveLength(0);
      expect(holes).toHaveLength(0);
      expect(apart(outline, outer)).toBeLessThan(1e-11);
      expect(Math.abs(area(outline) - area(outer))).toBeLessThan(1e-10);
      compared++;
    }
  });
});

describe('wild concave polygons', () => {
  test('without sharp tips: the same outline, the same hollows', () => {
    const random = randomNumbers(52);
    let compared = 0;
    let hollows = 0;
    while (compared < 150) {
      const polygon = wildPolygon(random);
      if (interiorAngles(polygon).some((angle) => angle < SHARPEST)) continue;
      const allowance = ALLOWANCES[compared % 3]!;
      const { outline, pockets } = allowanceOutline(polygon, allowance);
      const { outer, holes } = referenceBuffer(polygon, allowance);
      expect(apart(outline, outer)).toBeLessThan(1e-6);
      expect(Math.abs(area(outline) - area(outer))).toBeLessThan(1e-6);
      expect(pockets).toHaveLength(holes.length);
      const total = (rings: readonly Polygon[]) => rings.reduce((sum, ring) => sum + area(ring), 0);
      expect(Math.abs(total(pockets) - total(holes))).toBeLessThan(1e-6);
      hollows += holes.length;
      compared++;
    }
    expect(hollows).toBeGreaterThan(0);
  });

  test('with sharp tips: they differ only beyond the cuts', () => {
    const random = randomNumbers(53);
    let compared = 0;
    while (compared < 300) {
      const polygon = wildPolygon(random);
      const angles = interiorAngles(polygon);
      const tips = polygon.filter((_, i) => angles[i]! < SHARPEST);
      if (tips.length === 0) continue;
      const allowance = ALLOWANCES[compared % 3]!;
      const { outline } = allowanceOutline(polygon, allowance);
      const { outer } = referenceBuffer(polygon, allowance);
      const isPastCut = (p: Point) => tips.some((tip) => distance(tip, p) >= MITRE_REACH * allowance - 1e-6);
      for (const p of outline) if (!isPastCut(p)) expect(distanceToRing(p, outer)).toBeLessThan(1e-6);
      for (const p of outer) if (!isPastCut(p)) expect(distanceToRing(p, outline)).toBeLessThan(1e-6);
      expect(area(outline)).toBeLessThan(area(outer) + 1e-6);
      compared++;
    }
  });
});
