import { type Drawing, edgeId } from '@seamwright/arrangement';
import { checkSimple, SAME_COORDINATE, SNAP_DISTANCE } from '@seamwright/geometry';
import { expect } from 'vitest';

/** Inches: places that are the same when put down may grow apart a little when the drawing is resized. */
const ROUNDING = 2 * SAME_COORDINATE;

/**
 * Checks that a drawing holds together, sharing nothing with the package: a simple outline of a size that is sewn,
 * every name known and used, no line without length or drawn twice; facts are followed to the coordinates, and
 * hanging on itself is searched for by walking from every point.
 */
export function expectSound(drawing: Drawing): void {
  const { outline, splits, points } = drawing;
  const corners = outline.map((id) => points[id]!);
  expect(checkSimple(corners)).toMatchObject({ ok: true });
  for (const axis of ['x', 'y'] as const) {
    const along = corners.map((corner) => corner[axis]);
    expect(Math.max(...along) - Math.min(...along)).toBeLessThanOrEqual(120 + SAME_COORDINATE);
  }
  expect(new Set(outline).size).toBe(outline.length);

  const ends = new Map<string, readonly [string, string]>();
  for (const [i, corner] of outline.entries())
    ends.set(edgeId(corner), [corner, outline[(i + 1) % outline.length]!]);
  for (const { id, from, to } of splits) ends.set(id, [from, to]);
  expect(ends.size).toBe(outline.length + splits.length);
  expect(new Set([...ends.values()].flat())).toEqual(new Set(Object.keys(points)));
  expect(Object.entries(points).filter(([id, point]) => point.id !== id)).toEqual([]);
  const pairs = splits.map(({ from, to }) => [from, to].sort().join(' '));
  expect(new Set(pairs).size).toBe(splits.length);
  for (const [from, to] of ends.values()) {
    const [a, b] = [points[from]!, points[to]!];
    expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeGreaterThan(SNAP_DISTANCE);
  }

  for (const point of Object.values(points)) {
    if (point.on !== undefined) expect([1, 2]).toContain(point.on.length);
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
