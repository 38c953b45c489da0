import { boundingBox, type Polygon } from '@seamwright/geometry';
import { expect } from 'vitest';
import type { Shape } from '../bench/shapes.ts';
import type { Placement } from '../src/packing/placement.ts';
import type { Regions } from '../src/sheet/sheet-frame.ts';
import { distanceBetween } from './apart.ts';
import { ROUNDING } from './boxes.ts';

/** The shape's outline where it stands. */
export const outlineAt = ({ way, x, y }: Placement<Shape>): Polygon<'page'> =>
  (way as Shape['ways'][number] & { outlines: readonly Polygon<'page'>[] }).outlines[0]!.map((corner) => ({
    x: corner.x + x,
    y: corner.y + y,
  }));

const within = (outline: Polygon<'page'>, region: Regions['wide']): boolean => {
  const { minX, minY, maxX, maxY } = boundingBox(outline);
  return (
    minX >= region.minX - ROUNDING &&
    minY >= region.minY - ROUNDING &&
    maxX <= region.maxX + ROUNDING &&
    maxY <= region.maxY + ROUNDING
  );
};

/**
 * Every shape stands once, inside one of the regions, its outline a gap from the others.
 *
 * @returns how many pairs of shapes stand in each other's upright rectangle
 */
export function expectPacked(
  sheets: readonly (readonly Placement<Shape>[])[],
  shapes: readonly Shape[],
  regions: Regions,
  gap: number,
): number {
  let interlocked = 0;
  const names = sheets.flat().map(({ item }) => item.name);
  expect(names.sort((p, q) => p - q)).toEqual(shapes.map(({ name }) => name));
  for (const sheet of sheets) {
    const outlines = sheet.map(outlineAt);
    outlines.forEach((p, i) => {
      expect(within(p, regions.wide) || within(p, regions.tall)).toBe(true);
      for (const q of outlines.slice(i + 1)) {
        expect(distanceBetween(p, q)).toBeGreaterThanOrEqual(gap - ROUNDING);
        const [one, other] = [boundingBox(p), boundingBox(q)];
        if (one.minX < other.maxX && other.minX < one.maxX && one.minY < other.maxY && other.minY < one.maxY)
          interlocked++;
      }
    });
  }
  return interlocked;
}
