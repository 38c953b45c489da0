import { type Drawing, edgeId } from '@seamwright/arrangement';
import { checkSimple, SAME_COORDINATE, SNAP_DISTANCE } from '@seamwright/geometry';
import { expect } from 'vitest';

/** Inches: places that are the same when put down may grow apart a little when the drawing is resized. */
const ROUNDING = 2 * SAME_COORDINATE;

/** Checks that a drawing holds together: see {@link faultsOf}. */
export function expectSound(drawing: Drawing): void {
  expect(faultsOf(drawing)).toEqual([]);
}

/**
 * What does not hold together in a drawing, sharing nothing with the package: a simple outline of a size that is sewn,
 * every name known and used, no line without length or drawn twice; facts are followed to the coordinates, and
 * hanging on itself is searched for by walking from every point. One list, because a call of `expect` costs more than
 * most of what is looked at here, thousands of times.
 */
export function faultsOf(drawing: Drawing): readonly string[] {
  const faults: string[] = [];
  const must = (holds: boolean, fault: () => string) => {
    if (!holds) faults.push(fault());
  };
  const { outline, splits, points } = drawing;
  const corners = outline.map((id) => points[id]!);
  const simple = checkSimple(corners);
  must(simple.ok, () => `the outline is not simple: ${JSON.stringify(simple)}`);
  for (const axis of ['x', 'y'] as const) {
    const along = corners.map((corner) => corner[axis]);
    const size = Math.max(...along) - Math.min(...along);
    must(size <= 120 + SAME_COORDINATE, () => `the block is ${size} in along ${axis}`);
  }
  must(new Set(outline).size === outline.length, () => `a corner is twice in the outline: ${outline}`);

  const ends = new Map<string, readonly [string, string]>();
  for (const [i, corner] of outline.entries())
    ends.set(edgeId(corner), [corner, outline[(i + 1) % outline.length]!]);
  for (const { id, from, to } of splits) ends.set(id, [from, to]);
  must(ends.size === outline.length + splits.length, () => 'two lines have one name');
  const used = new Set([...ends.values()].flat());
  for (const id of Object.keys(points)) must(used.has(id), () => `${id} is the end of no line`);
  for (const id of used) must(points[id] !== undefined, () => `${id} is nowhere`);
  if (faults.length > 0) return faults;
  const pairs = splits.map(({ from, to }) => [from, to].sort().join(' '));
  must(new Set(pairs).size === splits.length, () => `a line is drawn twice: ${pairs}`);
  for (const [line, [from, to]] of ends) {
    const [a, b] = [points[from]!, points[to]!];
    must(Math.hypot(b.x - a.x, b.y - a.y) > SNAP_DISTANCE, () => `${line} has no length`);
  }

  for (const [id, point] of Object.entries(points)) {
    must(point.id === id, () => `${id} calls itself ${point.id}`);
    const more = Object.keys(point).filter((key) => !['id', 'x', 'y', 'on'].includes(key));
    must(more.length === 0, () => `${id} has ${more}`);
    const count = point.on?.length;
    must(count === undefined || count === 1 || count === 2, () => `${id} lies on ${count} lines`);
    for (const line of point.on ?? []) {
      const [a, b] = ends.get(line)!.map((end) => points[end]!) as [typeof point, typeof point];
      const size = Math.hypot(b.x - a.x, b.y - a.y);
      const off = ((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) / size;
      must(Math.abs(off) < ROUNDING, () => `${id} is ${off} in off ${line}`);
      const share = ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / size ** 2;
      must(share > -ROUNDING && share < 1 + ROUNDING, () => `${id} is beyond the ends of ${line}: ${share}`);
    }
    must(!hangsOnItself(id), () => `${id} hangs on itself`);
  }
  return faults;

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
