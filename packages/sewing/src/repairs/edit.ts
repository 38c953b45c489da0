import type { Arrangement, Drawing, DrawingPoint, LineId, PointId, Split } from '@seamwright/arrangement';
import { edgeId, MOST_FACTS } from '@seamwright/arrangement';
import {
  distance,
  distanceToSegment,
  type Point,
  SAME_COORDINATE,
  SNAP_DISTANCE,
} from '@seamwright/geometry';

/**
 * A drawing in the course of a repair. Points that are there are shared, new ones remember the lines they are put on; ids
 * count on from the highest number in use, so the same repair of the same drawing gives the same drawing.
 */
export class DrawingEdit {
  private readonly points: Map<PointId, DrawingPoint>;
  private readonly splits: Map<LineId, Split>;
  private last: number;

  constructor(private readonly drawing: Drawing) {
    this.points = new Map(Object.entries(drawing.points));
    this.splits = new Map(drawing.splits.map((split) => [split.id, split]));
    this.last = [...this.points.keys(), ...this.splits.keys()].reduce(
      (most, id) => Math.max(most, Number(/\d+$/.exec(id)?.[0] ?? 0)),
      0,
    );
  }

  at(point: PointId): Point {
    return this.points.get(point)!;
  }

  split(id: LineId): Split | undefined {
    return this.splits.get(id);
  }

  isCorner(point: PointId): boolean {
    return this.drawing.outline.includes(point);
  }

  /** The splits that end in a point. */
  endingIn(point: PointId): Split[] {
    return [...this.splits.values()].filter(({ from, to }) => from === point || to === point);
  }

  /** The point in a place, a new one where there is none. */
  pointAt({ x, y }: Point, on: readonly LineId[] = []): PointId {
    for (const point of this.points.values()) {
      if (distance(point, { x, y }) <= SAME_COORDINATE) return point.id;
    }
    this.last += 1;
    const id = `p${this.last}`;
    this.points.set(id, { id, x, y, on });
    return id;
  }

  /** The point at a vertex; a new one remembers the lines that cross there, without those in `except`. */
  pointAtVertex(arrangement: Arrangement, vertex: number, except: readonly LineId[] = []): PointId {
    const { at, points, lines } = arrangement.vertices[vertex]!;
    const there = points.filter((id) => this.points.has(id));
    const known = there.find((id) => this.isCorner(id)) ?? there[0];
    if (known !== undefined) return known;
    const through = lines.flatMap((line) => {
      const edge = arrangement.edges.find(
        (e) =>
          e.line === line &&
          (e.from === vertex || e.to === vertex) &&
          e.drawn.some((d) => !except.includes(d)),
      );
      return edge === undefined ? [] : [edge.drawn.find((d) => !except.includes(d))!];
    });
    return this.pointAt(at, through.slice(0, MOST_FACTS));
  }

  addSplit(from: PointId, to: PointId): LineId {
    this.last += 1;
    const id = `s${this.last}`;
    this.splits.set(id, { id, from, to });
    return id;
  }

  setEnd(id: LineId, end: 'from' | 'to', point: PointId): void {
    this.splits.set(id, { ...this.splits.get(id)!, [end]: point });
  }

  remove(id: LineId): void {
    this.splits.delete(id);
  }

  /** Moves a point with all lines that end in it. */
  move(id: PointId, { x, y }: Point): void {
    this.points.set(id, { ...this.points.get(id)!, x, y });
  }

  setFacts(id: PointId, on: readonly LineId[]): void {
    this.points.set(id, { ...this.points.get(id)!, on });
  }

  /** The points that were put on a line. */
  placedOn(line: LineId): DrawingPoint[] {
    return [...this.points.values()].filter(({ on }) => on?.includes(line));
  }

  /** The drawing as it is now: without points that nothing needs, and with such facts only as can be kept true. */
  finish(): Drawing {
    const splits = [...this.splits.values()].filter(({ from, to }) => from !== to);
    const used = new Set([...this.drawing.outline, ...splits.flatMap(({ from, to }) => [from, to])]);
    const kept = [...this.points.values()].filter(({ id }) => used.has(id));
    const { outline } = this.drawing;
    const ends = new Map<LineId, readonly [PointId, PointId]>([
      ...outline.map((id, i) => [edgeId(id), [id, outline[(i + 1) % outline.length]!]] as const),
      ...splits.map(({ id, from, to }) => [id, [from, to]] as const),
    ]);
    const facts = new Map<PointId, readonly LineId[]>();
    /** Whether where a line runs depends on where the point is. */
    const hangsOn = (line: LineId, point: PointId): boolean =>
      ends
        .get(line)!
        .some((end) => end === point || (facts.get(end) ?? []).some((next) => hangsOn(next, point)));
    for (const point of kept) {
      if (this.isCorner(point.id)) continue;
      const sound: LineId[] = [];
      for (const line of point.on ?? []) {
        const [from, to] = ends.get(line) ?? [];
        if (from === undefined || to === undefined || sound.length === MOST_FACTS || sound.includes(line))
          continue;
        if (distanceToSegment(point, this.at(from), this.at(to)) > SNAP_DISTANCE) continue;
        if (!hangsOn(line, point.id)) sound.push(line);
      }
      facts.set(point.id, sound);
    }
    const points: Record<PointId, DrawingPoint> = {};
    for (const { id, x, y } of kept) {
      const on = facts.get(id) ?? [];
      points[id] = on.length === 0 ? { id, x, y } : { id, x, y, on };
    }
    return { points, outline, splits };
  }
}
