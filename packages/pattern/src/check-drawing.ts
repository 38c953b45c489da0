import { type Drawing, edgeId, type LineId, MOST_FACTS, type PointId } from '@seamwright/arrangement';
import {
  boundingBox,
  checkLength,
  checkSimple,
  distanceToLine,
  FARTHEST_POINT,
  fail,
  formatLength,
  ok,
  type Result,
  SIZE_RANGE,
  SNAP_DISTANCE,
} from '@seamwright/geometry';

/**
 * Whether a drawing holds together: every point that is spoken of exists, ids are not used twice, the outline is
 * a simple shape of a size that can be sewn, and what is said of points on lines can be true. Splits may be
 * anywhere and cross as they like: what that means is for the arrangement to find out.
 */
export function checkDrawing(drawing: Drawing): Result<Drawing> {
  return (
    checkPoints(drawing) ??
    checkOutline(drawing) ??
    checkSplits(drawing) ??
    checkFacts(drawing) ??
    ok(drawing)
  );
}

type Failure = ReturnType<typeof fail> | null;

function checkPoints(drawing: Drawing): Failure {
  for (const [key, { id, x, y }] of Object.entries(drawing.points)) {
    const where = `point "${key}"`;
    if (id !== key)
      return fail(`A point is kept under another id than its own, "${id}"`, where, 'Make both the same');
    if (!(Math.abs(x) <= FARTHEST_POINT && Math.abs(y) <= FARTHEST_POINT)) {
      return fail(
        `A coordinate is not a number from −${FARTHEST_POINT} to ${FARTHEST_POINT}`,
        where,
        'Give the point a place on the block',
      );
    }
  }
  return null;
}

function checkOutline({ points, outline }: Drawing): Failure {
  const missing = outline.find((id) => !has(points, id));
  if (missing !== undefined) return noSuchPoint(missing, 'outline');
  const twice = repeated(outline);
  if (twice !== undefined) {
    return fail(`The outline passes the point "${twice}" twice`, 'outline', 'Name each corner once');
  }
  const corners = outline.map((id) => points[id]!);
  const simple = checkSimple(corners);
  if (!simple.ok) {
    const { what, where, remedy } = simple.problem;
    return fail(what.replace(/^The shape/, 'The outline'), where === '' ? 'outline' : where, remedy);
  }
  const box = boundingBox(corners);
  for (const [length, across] of [
    [box.maxX - box.minX, 'wide'],
    [box.maxY - box.minY, 'high'],
  ] as const) {
    if (checkLength(length, 'in', SIZE_RANGE).ok) continue;
    const [least, most] = [SIZE_RANGE.least, SIZE_RANGE.most].map((bound) => formatLength(bound, 'in'));
    return fail(
      `The block is ${formatLength(length, 'in')} ${across}, and a block has from ${least} to ${most}`,
      'outline',
      'Check the size and its unit',
    );
  }
  return null;
}

function checkSplits({ points, outline, splits }: Drawing): Failure {
  const twice = repeated(splits.map((split) => split.id));
  if (twice !== undefined)
    return fail('Two splits have the same id', `split "${twice}"`, 'Give one of them another');
  const edges = new Set(outline.map(edgeId));
  for (const { id, from, to } of splits) {
    const where = `split "${id}"`;
    if (edges.has(id)) return fail('A split has the id of an edge of the outline', where, 'Give it another');
    const missing = [from, to].find((end) => !has(points, end));
    if (missing !== undefined) return noSuchPoint(missing, where);
    if (from === to) return fail('A split ends where it starts', where, 'Remove it, or give it another end');
  }
  return null;
}

/** A point on a line hangs on the line's ends, and they on the lines that they are on; in a ring nothing would hold. */
function checkFacts(drawing: Drawing): Failure {
  const ends = endsOfLines(drawing);
  const placedOn = Object.values(drawing.points).filter((point) => point.on !== undefined);
  for (const { id, x, y, on = [] } of placedOn) {
    const where = `point "${id}"`;
    if (on.length > MOST_FACTS)
      return fail('A point is said to be on more than two lines', where, 'Keep two');
    if (new Set(on).size < on.length)
      return fail('A point is said to be on one line twice', where, 'Keep one');
    for (const line of on) {
      const [from, to] = ends.get(line) ?? [];
      if (from === undefined || to === undefined) {
        return fail(
          `A point is said to be on the line "${line}", and there is none`,
          where,
          'Remove it from "on"',
        );
      }
      if (from === id || to === id) {
        return fail(
          `A point is said to be on the line "${line}", which ends in it`,
          where,
          'Remove it from "on"',
        );
      }
      if (distanceToLine({ x, y }, drawing.points[from]!, drawing.points[to]!) > SNAP_DISTANCE) {
        return fail(
          `A point is said to be on the line "${line}", and lies beside it`,
          where,
          'Move it there, or remove the line from "on"',
        );
      }
    }
  }
  const ring = pointInRing(drawing, ends);
  if (ring !== null) {
    return fail(
      'A point is placed on a line that is itself placed on the point',
      `point "${ring}"`,
      'Remove one of these lines from "on"',
    );
  }
  return null;
}

type Ends = ReadonlyMap<LineId, readonly [PointId, PointId]>;

function endsOfLines({ outline, splits }: Drawing): Ends {
  const edges = outline.map(
    (corner, i) => [edgeId(corner), [corner, outline[(i + 1) % outline.length]!]] as const,
  );
  return new Map([...edges, ...splits.map(({ id, from, to }) => [id, [from, to]] as const)]);
}

/** A point that hangs on itself by way of lines and their ends. Takes off, again and again, the points that hang on nothing. */
function pointInRing(drawing: Drawing, ends: Ends): PointId | null {
  const waitsFor = new Map<PointId, Set<PointId>>();
  for (const { id, on = [] } of Object.values(drawing.points)) {
    waitsFor.set(id, new Set(on.flatMap((line) => ends.get(line) ?? [])));
  }
  const waitedForBy = new Map<PointId, PointId[]>();
  for (const [id, others] of waitsFor) {
    for (const other of others) waitedForBy.set(other, [...(waitedForBy.get(other) ?? []), id]);
  }
  const free = [...waitsFor.keys()].filter((id) => waitsFor.get(id)!.size === 0);
  for (let id = free.pop(); id !== undefined; id = free.pop()) {
    waitsFor.delete(id);
    for (const waiting of waitedForBy.get(id) ?? []) {
      const others = waitsFor.get(waiting)!;
      others.delete(id);
      if (others.size === 0) free.push(waiting);
    }
  }
  return waitsFor.keys().next().value ?? null;
}

const noSuchPoint = (id: PointId, where: string) =>
  fail(`There is no point "${id}"`, where, 'Add the point, or name one that is there');

const has = (points: Drawing['points'], id: PointId): boolean => Object.hasOwn(points, id);

/** The first value that comes a second time. */
export function repeated(values: readonly string[]): string | undefined {
  const seen = new Set<string>();
  return values.find((value) => seen.size === seen.add(value).size);
}
