import {
  distance,
  distanceToLine,
  distanceToSegment,
  lineCrossing,
  type Point,
  parameterOn,
  SAME_COORDINATE,
  segmentCrossing,
} from '@seamwright/geometry';
import type Flatbush from 'flatbush';
import { boxOf, indexBoxes } from './boxes.ts';
import { Cells } from './cells.ts';
import type { Drawing, LineId } from './drawing.ts';
import { type LineGroup, projected, type Stretch } from './lines.ts';
import type { Nodes } from './nodes.ts';
import type { Tolerances } from './tolerances.ts';

/** A place where lines meet, while the arrangement is being made. */
export interface Place {
  at: Point;
  readonly corner: boolean;
  /** Each line once. */
  readonly lines: number[];
}

/** Which places lie on which lines. Nodes come first and keep their indices; crossings follow. */
export interface Incidence {
  readonly places: readonly Place[];
  readonly groups: readonly LineGroup[];
}

/** How often places and lines are fitted to each other; imprecise drawings settle after two rounds. */
const FITTING_ROUNDS = 4;

/**
 * Decides which points lie on which lines: first by the drawing's own facts (a split ends here; this point was put
 * on that line), then by nearness (an end that stops short of a line or runs past it by no more than `snap`), then
 * by crossing.
 *
 * Two different lines meet in one place at most. This is kept throughout: a place is put on a line only if no other
 * place is already common to that line and one of the place's own. It is what makes many lines through one point
 * come out as one point.
 */
export function findIncidences(
  drawing: Drawing,
  nodes: Nodes,
  groups: readonly LineGroup[],
  tolerances: Tolerances,
): Incidence {
  const work = new Work(nodes, groups);
  work.attachEnds();
  work.attachByFact(drawing, nodes, tolerances);
  work.attachByNearness(tolerances);
  work.fit(tolerances);
  work.attachCrossings(tolerances);
  return { places: work.places, groups };
}

class Work {
  readonly places: Place[];
  private readonly lineOf = new Map<LineId, number>();
  private readonly spans: { line: number; stretch: Stretch }[] = [];
  /** For two lines, the place in which they meet. */
  private readonly common = new Map<number, number>();

  constructor(
    nodes: Nodes,
    private readonly groups: readonly LineGroup[],
  ) {
    this.places = nodes.nodes.map((node) => ({ at: node.at, corner: node.corner, lines: [] }));
    groups.forEach((group, line) => {
      for (const stretch of group.stretches) {
        this.lineOf.set(stretch.id, line);
        this.spans.push({ line, stretch });
      }
    });
  }

  private pair(k: number, l: number): number {
    return Math.min(k, l) * this.groups.length + Math.max(k, l);
  }

  private mayAttach(place: number, line: number): boolean {
    for (const other of this.places[place]!.lines) {
      const met = this.common.get(this.pair(other, line));
      if (met !== undefined && met !== place) return false;
    }
    return true;
  }

  private attach(place: number, line: number): void {
    const { lines } = this.places[place]!;
    if (lines.includes(line)) return;
    for (const other of lines) this.common.set(this.pair(other, line), place);
    lines.push(line);
  }

  attachEnds(): void {
    for (const { line, stretch } of this.spans) {
      this.attach(stretch.from, line);
      this.attach(stretch.to, line);
    }
  }

  attachByFact(drawing: Drawing, nodes: Nodes, { snap }: Tolerances): void {
    for (const [id, place] of nodes.nodeOf) {
      for (const lineId of drawing.points[id]!.on ?? []) {
        const line = this.lineOf.get(lineId);
        if (line === undefined || this.places[place]!.lines.includes(line)) continue;
        // A fact that the coordinates flatly contradict was left behind by an edit; it is no fact any more.
        if (this.distanceTo(place, line) > snap || !this.mayAttach(place, line)) continue;
        this.attach(place, line);
      }
    }
  }

  attachByNearness({ snap, straight }: Tolerances): void {
    const index = this.indexSpans(snap);
    const candidates: { place: number; line: number; off: number }[] = [];
    this.places.forEach(({ at, corner, lines }, place) => {
      for (const s of index.search(at.x, at.y, at.x, at.y)) {
        const { line, stretch } = this.spans[s]!;
        if (lines.includes(line)) continue;
        const off = distanceToSegment(at, this.places[stretch.from]!.at, this.places[stretch.to]!.at);
        if (off <= (corner ? straight : snap)) candidates.push({ place, line, off });
      }
    });
    candidates.sort((c, d) => c.off - d.off || c.place - d.place || c.line - d.line);
    for (const { place, line } of candidates) if (this.mayAttach(place, line)) this.attach(place, line);
  }

  /** Moves places onto their lines, and lines after those of their ends that had to move. Precise drawings stay as they are. */
  fit({ snap }: Tolerances): void {
    for (let round = 0; round < FITTING_ROUNDS; round += 1) {
      const moved = new Set<number>();
      this.places.forEach((place, index) => {
        if (place.corner) return;
        if (place.lines.every((line) => this.distanceTo(index, line) <= SAME_COORDINATE)) return;
        place.at = this.fitted(place, snap);
        moved.add(index);
      });
      if (moved.size === 0) return;
      for (const group of this.groups) {
        if (!group.fixed && group.stretches.some((s) => moved.has(s.from) || moved.has(s.to))) {
          this.stretchAgain(group);
        }
      }
    }
  }

  /** Runs a line through the farthest of its ends, where they lie now. */
  private stretchAgain(group: LineGroup): void {
    const ends = group.stretches.flatMap((s) => [this.places[s.from]!.at, this.places[s.to]!.at]);
    ends.sort((p, q) => parameterOn(group.a, group.b, p) - parameterOn(group.a, group.b, q));
    group.a = ends[0]!;
    group.b = ends.at(-1)!;
  }

  /**
   * Where a place belongs by its lines: the crossing of the two that cross most squarely, lines of the outline before
   * others. Where that would carry it farther than `snap` allows (lines at a shallow angle), the foot on the line
   * that it is farthest from.
   */
  private fitted(place: Place, snap: number): Point {
    const lines = place.lines.map((line) => this.groups[line]!);
    lines.sort((g, h) => Number(h.fixed) - Number(g.fixed) || distance(h.a, h.b) - distance(g.a, g.b));
    let best: Point | undefined;
    let squarest = 0;
    for (const [i, g] of lines.entries()) {
      for (const h of lines.slice(i + 1)) {
        const at = lineCrossing(g.a, g.b, h.a, h.b);
        if (at === null || distance(at, place.at) > 2 * snap) continue;
        const angle = squareness(g, h) + (g.fixed ? 1 : 0);
        if (angle > squarest) {
          squarest = angle;
          best = at;
        }
      }
    }
    if (best !== undefined) return best;
    const off = (g: LineGroup) => distanceToLine(place.at, g.a, g.b);
    const farthest = lines.reduce((g, h) => (off(h) > off(g) ? h : g));
    return projected(place.at, farthest.a, farthest.b);
  }

  /** Splits that cross between their ends get a place there; further lines through the same point join it. */
  attachCrossings({ straight }: Tolerances): void {
    const index = this.indexSpans(SAME_COORDINATE);
    const cells = new Cells(straight);
    this.places.forEach(({ at }, place) => {
      cells.add(place, at);
    });
    this.spans.forEach(({ line, stretch }, i) => {
      const a = this.places[stretch.from]!.at;
      const b = this.places[stretch.to]!.at;
      const { minX, minY, maxX, maxY } = boxOf(a, b);
      const later = index.search(minX, minY, maxX, maxY, (j) => j > i && this.spans[j]!.line !== line);
      for (const j of later.sort((p, q) => p - q)) {
        const other = this.spans[j]!;
        if (this.common.has(this.pair(line, other.line))) continue;
        const c = this.places[other.stretch.from]!.at;
        const d = this.places[other.stretch.to]!.at;
        const crossing = segmentCrossing(a, b, c, d);
        if (crossing !== null) this.placeCrossing(crossing.at, line, other.line, straight, cells);
      }
    });
  }

  private placeCrossing(at: Point, k: number, l: number, straight: number, cells: Cells): void {
    let nearest: number | undefined;
    let nearestDistance = straight;
    for (const place of cells.near(at)) {
      const d = distance(this.places[place]!.at, at);
      if (d > nearestDistance || !this.mayAttach(place, k) || !this.mayAttach(place, l)) continue;
      nearest = place;
      nearestDistance = d;
    }
    if (nearest === undefined) {
      nearest = this.places.length;
      this.places.push({ at, corner: false, lines: [] });
      cells.add(nearest, at);
    }
    this.attach(nearest, k);
    this.attach(nearest, l);
  }

  private distanceTo(place: number, line: number): number {
    const group = this.groups[line]!;
    return distanceToLine(this.places[place]!.at, group.a, group.b);
  }

  private indexSpans(margin: number): Flatbush {
    const boxes = this.spans.map(({ stretch: { from, to } }) =>
      boxOf(this.places[from]!.at, this.places[to]!.at),
    );
    return indexBoxes(boxes, margin);
  }
}

/** Sine of the angle between two lines: 1 when they cross squarely. */
function squareness(g: LineGroup, h: LineGroup): number {
  const ux = g.b.x - g.a.x;
  const uy = g.b.y - g.a.y;
  const vx = h.b.x - h.a.x;
  const vy = h.b.y - h.a.y;
  return Math.abs(ux * vy - uy * vx) / (Math.hypot(ux, uy) * Math.hypot(vx, vy));
}
