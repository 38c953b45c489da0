import {
  contains,
  distance,
  type Point,
  type Polygon,
  type Segment,
  segmentCrossing,
} from '@seamwright/geometry';
import { randomFrom } from './windmills.ts';

/** A drawing of the family, with the way in which it was begun. */
export interface FamilyDrawing {
  readonly kind: Kind;
  readonly shape: string;
  readonly outline: Polygon;
  readonly segments: readonly Segment[];
}

type Random = () => number;

const polygon = (...corners: readonly (readonly [number, number])[]): Polygon =>
  corners.map(([x, y]) => ({ x, y }));

/** Outlines, convex and not. */
export const OUTLINES: Readonly<Record<string, Polygon>> = {
  square: polygon([0, 0], [12, 0], [12, 12], [0, 12]),
  oblong: polygon([0, 0], [17, 0], [17, 8], [0, 8]),
  hexagon: polygon([4, 0], [11, 0], [15, 6], [11, 12], [4, 12], [0, 6]),
  house: polygon([0, 6], [7, 0], [14, 6], [14, 15], [0, 15]),
  'L-shape': polygon([0, 0], [6, 0], [6, 6], [13, 6], [13, 13], [0, 13]),
  arrow: polygon([0, 0], [8, 4], [16, 0], [16, 9], [8, 14], [0, 9]),
  'U-shape': polygon([0, 0], [5, 0], [5, 7], [10, 7], [10, 0], [15, 0], [15, 12], [0, 12]),
};

/** Inches: what ends on another line, or passes an end, keeps this far from other ends, so that it is clear what is drawn. */
const CLEAR = 0.12;

/** A block while it is drawn: each new line ends on lines that are there. */
class Sketch {
  readonly segments: Segment[] = [];
  private readonly sides: Segment[];

  constructor(
    readonly outline: Polygon,
    private readonly random: Random,
  ) {
    this.sides = outline.map((a, i) => ({ a, b: outline[(i + 1) % outline.length]! }));
  }

  get lines(): readonly Segment[] {
    return [...this.sides, ...this.segments];
  }

  draw(a: Point, b: Point): void {
    this.segments.push({ a, b });
  }

  /** A point inside the outline, `room` from its edge and from what is drawn; null where none is found. */
  inside(room: number): Point | null {
    for (let tries = 0; tries < 500; tries += 1) {
      const p = { x: 17 * this.random(), y: 15 * this.random() };
      if (contains(this.outline, p) !== 'inside') continue;
      const around = Array.from({ length: 16 }, (_, i) => ({
        a: p,
        b: towards(p, (2 * Math.PI * i) / 16, room),
      }));
      if (!around.some(({ a, b }) => this.lines.some((l) => segmentCrossing(a, b, l.a, l.b) !== null)))
        return p;
    }
    return null;
  }

  /** Where the straight way from a point first meets a line. */
  ahead(from: Point, angle: number): Point {
    const far = towards(from, angle, 100);
    const hits = this.lines
      .map((l) => segmentCrossing(from, far, l.a, l.b)?.at)
      .filter((at): at is Point => at !== undefined && distance(at, from) > CLEAR / 2);
    return hits.reduce((best, at) => (distance(at, from) < distance(best, from) ? at : best), far);
  }

  /** A line from one that is there to the next: it divides one patch. */
  stub(): void {
    const along = this.pick(this.lines);
    const from = amid(along, this.random);
    const angle = 2 * Math.PI * this.random();
    // Nearly along the line it would leave slivers.
    const lean = Math.abs(Math.sin(angle - Math.atan2(along.b.y - along.a.y, along.b.x - along.a.x)));
    if (lean < 0.3 || contains(this.outline, towards(from, angle, CLEAR)) !== 'inside') return;
    const to = this.ahead(from, angle);
    if (distance(from, to) > 4 * CLEAR) this.draw(from, to);
  }

  /** A line from edge to edge, across whatever is there. */
  chord(): void {
    const [from, to] = [this.pick(this.sides), this.pick(this.sides)];
    if (from !== to) this.draw(amid(from, this.random), amid(to, this.random));
  }

  pick<T>(list: readonly T[]): T {
    return list[Math.floor(this.random() * list.length)]!;
  }
}

const towards = ({ x, y }: Point, angle: number, far: number): Point => ({
  x: x + far * Math.cos(angle),
  y: y + far * Math.sin(angle),
});

function amid({ a, b }: Segment, random: Random): Point {
  const t = 0.1 + 0.8 * random();
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

const numbers = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

/** Directions all round, at least a third of an even share apart. */
function allRound(count: number, random: Random): number[] {
  const start = random();
  return numbers(count).map((i) => (2 * Math.PI * (i + 0.66 * random() + start)) / count);
}

/** How a drawing begins. */
const BEGINNINGS = {
  /** Lines that end on lines: T-junctions alone. */
  stubs: (sketch: Sketch, random: Random) => {
    for (const _ of numbers(1 + Math.floor(random() * 7))) sketch.stub();
  },

  /** Lines right across. */
  chords: (sketch: Sketch, random: Random) => {
    for (const _ of numbers(1 + Math.floor(random() * 4))) sketch.chord();
  },

  /** A ring of seams each of which ends on the next, grown outwards to the next line. */
  windmill: (sketch: Sketch, random: Random) => {
    if (random() < 0.5) sketch.stub();
    const k = 3 + Math.floor(random() * 4);
    const radius = 0.6 + 0.6 * random();
    const reach = radius * Math.tan(Math.PI / k);
    const centre = sketch.inside(Math.hypot(radius, reach) + 0.3);
    if (centre === null) return;
    const turned = random();
    const side = random() < 0.5 ? 1 : -1;
    const ring = numbers(k).map((i) => {
      const angle = side * 2 * Math.PI * (turned + i / k);
      const foot = towards(centre, angle, radius);
      const onward = angle + (side * Math.PI) / 2;
      return { corner: towards(foot, onward, -reach), onward };
    });
    const seams = ring.map(({ corner, onward }) => ({ a: corner, b: sketch.ahead(corner, onward) }));
    for (const { a, b } of seams) sketch.draw(a, b);
  },

  /** Lines from one point outwards, two of them in line or none. */
  spokes: (sketch: Sketch, random: Random) => {
    const hub = sketch.inside(1);
    if (hub === null) return;
    const angles = allRound(3 + Math.floor(random() * 4), random);
    if (random() < 0.5) angles[1] = angles[0]! + Math.PI;
    const spokes = angles.map((angle) => ({ a: hub, b: sketch.ahead(hub, angle) }));
    for (const { a, b } of spokes) sketch.draw(a, b);
  },

  /** A small shape whose sides run on to the next line, as the logs of a cabin do, or stop at its corners, mitred or not. */
  framed: (sketch: Sketch, random: Random) => {
    const centre = sketch.inside(1.6);
    if (centre === null) return;
    const angles = allRound(3 + Math.floor(random() * 2), random);
    const corners = angles.map((angle) => towards(centre, angle, 1.2));
    const [runningOn, mitred] = [sketch.pick([0.4, 0.9, 1]), random()];
    corners.forEach((corner, i) => {
      const next = corners[(i + 1) % corners.length]!;
      const along = Math.atan2(next.y - corner.y, next.x - corner.x);
      const on = random() < runningOn;
      sketch.draw(on ? sketch.ahead(corner, along + Math.PI) : corner, on ? sketch.ahead(next, along) : next);
      if (!on && random() < mitred) sketch.draw(corner, sketch.ahead(corner, angles[i]!));
    });
  },

  /** Squares in rows and columns, some of them made one with their neighbours: seams that turn corners, or end on others. */
  lattice: (sketch: Sketch, random: Random) => {
    const [columns, rows] = sketch.pick([
      [2, 2],
      [3, 2],
      [3, 3],
      [4, 3],
      [4, 4],
    ] as const);
    const xs = numbers(columns + 1).map((i) => (17 * i) / columns + (i % columns === 0 ? 0 : random() - 0.5));
    const ys = numbers(rows + 1).map((j) => (15 * j) / rows + (j % rows === 0 ? 0 : random() - 0.5));
    const patchOf = numbers(columns * rows);
    const cell = (i: number, j: number) => patchOf[j * columns + i];
    const merges = Math.max(columns * rows - 11, Math.floor(random() * columns * rows * 0.6));
    for (const _ of numbers(merges)) {
      const [i, j] = [Math.floor(random() * columns), Math.floor(random() * rows)];
      const [other, kept] = [random() < 0.5 ? cell(i + 1, j) : cell(i, j + 1), cell(i, j)];
      patchOf.forEach((patch, c) => {
        if (patch === other) patchOf[c] = kept!;
      });
    }
    for (const i of numbers(columns)) {
      for (const j of numbers(rows)) {
        const corner = { x: xs[i + 1]!, y: ys[j + 1]! };
        if (i + 1 < columns && cell(i, j) !== cell(i + 1, j)) sketch.draw({ x: corner.x, y: ys[j]! }, corner);
        if (j + 1 < rows && cell(i, j) !== cell(i, j + 1)) sketch.draw({ x: xs[i]!, y: corner.y }, corner);
      }
    }
  },
} satisfies Record<string, (sketch: Sketch, random: Random) => void>;

export type Kind = keyof typeof BEGINNINGS;
export const KINDS = Object.keys(BEGINNINGS) as Kind[];

/** The drawing of a kind with this seed: begun in its way, with some stubs and perhaps a chord added. */
export function familyDrawing(kind: Kind, seed: number): FamilyDrawing {
  const random = randomFrom(1000 * KINDS.indexOf(kind) + 7919 * (seed + 1));
  const shapes = Object.keys(OUTLINES);
  const shape = kind === 'lattice' ? 'oblong' : shapes[Math.floor(random() * shapes.length)]!;
  // A lattice fills its outline.
  const outline = kind === 'lattice' ? polygon([0, 0], [17, 0], [17, 15], [0, 15]) : OUTLINES[shape]!;
  const sketch = new Sketch(outline, random);
  BEGINNINGS[kind](sketch, random);
  if (kind !== 'chords' && random() < 0.2) sketch.chord();
  for (const _ of numbers(Math.floor(random() * 5))) sketch.stub();
  return { kind, shape, outline, segments: sketch.segments };
}
