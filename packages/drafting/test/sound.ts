import { type Drawing, edgeId } from '@seamwright/arrangement';
import { SAME_COORDINATE } from '@seamwright/geometry';
import { expect } from 'vitest';
import { checkDrawing } from '../src/index.ts';

/** Inches: places that are the same when put down may grow apart a little when the drawing is resized. */
const ROUNDING = 2 * SAME_COORDINATE;

/**
 * Checks a drawing in two ways: by the package's own check, and by one that shares nothing with it: facts are
 * followed to the coordinates, and hanging on each other is searched for by walking from every point.
 */
export function expectSound(drawing: Drawing): void {
  expect(checkDrawing(drawing)).toMatchObject({ ok: true });
  const ends = new Map<string, readonly [string, string]>();
  const { outline, splits, points } = drawing;
  for (const [i, corner] of outline.entries())
    ends.set(edgeId(corner), [corner, outline[(i + 1) % outline.length]!]);
  for (const { id, from, to } of splits) ends.set(id, [from, to]);

  for (const point of Object.values(points)) {
    expect(Object.keys(point).filter((key) => !['id', 'x', 'y', 'on'].includes(key))).toEqual([]);
    for (const line of point.on ?? []) {
      const [a, b] = ends.get(line)!.map((id) => points[id]!) as [typeof point, typeof point];
      const size = Math.hypot(b.x - a.x, b.y - a.y);
      const off = ((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) / size;
      expect(Math.abs(off)).toBeLessThan(ROUNDING);
      const share = ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / size ** 2;
      expect(share).toBeGreaterThan(-ROUNDING);
      expect(share).toBeLessThan(1 + ROUNDING);
    }
    expect(hangsOnItself(point.id)).toBe(false);
  }

  function hangsOnItself(start: string): boolean {
    const seen = new Set<string>();
    const walk = (id: string): boolean => {
      const below = (points[id]!.on ?? []).flatMap((line) => ends.get(line)!);
      return below.some((next) => {
        if (next === start) return true;
        if (seen.has(next)) return false;
        seen.add(next);
        return walk(next);
      });
    };
    return walk(start);
  }
}

/** Freezes a drawing through and through, so that an edit that changes it in place throws. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
