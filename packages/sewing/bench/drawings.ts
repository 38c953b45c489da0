import { area as areaOf, type Point, type Segment } from '@seamwright/geometry';

/** What is measured: an outline and splits, as files have them. */
export interface Sketch {
  readonly outline: readonly Point[];
  readonly segments: readonly Segment[];
}

/** A family of drawings: the one with about so many patches. */
export type Family = (patches: number) => Sketch;

/** A family without its largest drawings. */
export const upTo =
  (most: number, family: Family): Family =>
  (patches) =>
    family(Math.min(patches, most));

const line = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

const rectangle = (width: number, height: number): Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

/** Strips side by side: the simplest block that is sewn on one foundation. */
export const strips: Family = (patches) => ({
  outline: rectangle(patches, 6),
  segments: range(patches - 1).map((i) => line(i + 1, 0, i + 1, 6)),
});

/** Four logs to a round, each ending on the next; one foundation. */
export const logCabin: Family = (patches) => {
  const rounds = Math.max(1, Math.round((patches - 1) / 4));
  const size = 2 * rounds + 1;
  const segments = range(rounds).flatMap((r) => {
    const [low, high] = [r, size - r];
    return [
      line(low + 1, low, low + 1, high),
      line(low + 1, high - 1, high, high - 1),
      line(high - 1, low, high - 1, high - 1),
      line(low + 1, low + 1, high - 1, low + 1),
    ];
  });
  return { outline: rectangle(size, size), segments };
};

/** Three patches to a goose, one above the other; one foundation. */
export const geese: Family = (patches) => {
  const count = Math.max(1, Math.round(patches / 3));
  const segments = range(count).flatMap((i) => [
    ...(i === 0 ? [] : [line(0, 2 * i, 4, 2 * i)]),
    line(0, 2 * i + 2, 2, 2 * i),
    line(2, 2 * i, 4, 2 * i + 2),
  ]);
  return { outline: rectangle(4, 2 * count), segments };
};

/** Squares in rows and columns, by lines right across: n foundations for n × n. */
export const grid: Family = (patches) => {
  const n = Math.max(2, Math.round(Math.sqrt(patches)));
  return {
    outline: rectangle(n, n),
    segments: range(n - 1).flatMap((i) => [line(i + 1, 0, i + 1, n), line(0, i + 1, n, i + 1)]),
  };
};

/** Tiles of one size in a square, with lines right across between them. */
function tiled(count: number, size: number, tile: readonly Segment[]): Sketch {
  const n = Math.max(1, Math.round(Math.sqrt(count)));
  const moved = ({ a, b }: Segment, dx: number, dy: number) => line(a.x + dx, a.y + dy, b.x + dx, b.y + dy);
  const tiles = range(n).flatMap((column) =>
    range(n).flatMap((row) => tile.map((segment) => moved(segment, column * size, row * size))),
  );
  const between = range(n - 1).flatMap((i) => [
    line((i + 1) * size, 0, (i + 1) * size, n * size),
    line(0, (i + 1) * size, n * size, (i + 1) * size),
  ]);
  return { outline: rectangle(n * size, n * size), segments: [...between, ...tiles] };
}

/** Ohio stars, 21 patches each, side by side. */
export const stars: Family = (patches) => {
  const crossed = [
    [1, 0],
    [0, 1],
    [2, 1],
    [1, 2],
  ].flatMap(([x, y]) => [line(x!, y!, x! + 1, y! + 1), line(x! + 1, y!, x!, y! + 1)]);
  const thirds = [1, 2].flatMap((v) => [line(v, 0, v, 3), line(0, v, 3, v)]);
  return tiled(patches / 21, 3, [...thirds, ...crossed]);
};

/** Windmills side by side, each of four oblongs round a square: none can be sewn with straight seams. */
export const windmills: Family = (patches) =>
  tiled(patches / 5, 3, [line(1, 0, 1, 2), line(0, 2, 2, 2), line(2, 1, 2, 3), line(1, 1, 3, 1)]);

/** One windmill whose sails are strips: a large block with one small thing in its way. */
export const stripedWindmill: Family = (patches) => {
  const each = Math.max(1, Math.round((patches - 1) / 4));
  const size = 3 * each;
  const strip = range(each - 1).map((i) => i + 1);
  return {
    outline: rectangle(size, size),
    segments: [
      line(each, 0, each, 2 * each),
      line(0, 2 * each, 2 * each, 2 * each),
      line(2 * each, each, 2 * each, size),
      line(each, each, size, each),
      ...strip.map((v) => line(v, 0, v, 2 * each)),
      ...strip.map((v) => line(each, v, size, v)),
      ...strip.map((v) => line(2 * each + v, each, 2 * each + v, size)),
      ...strip.map((v) => line(0, 2 * each + v, 2 * each, 2 * each + v)),
    ],
  };
};

/** Mitred attic windows side by side, three patches each: at the corner of each pane three seams meet, so none can be sewn. */
export const atticWindows: Family = (patches) =>
  tiled(patches / 3, 3, [line(1, 0, 1, 2), line(1, 2, 3, 2), line(0, 3, 1, 2)]);

/** Long triangles side by side, each too sharp at its tip; one foundation. */
export const needles: Family = (patches) => ({
  outline: rectangle((patches - 1) / 2, 6),
  segments: range(patches - 1).map((i) => {
    const [from, to] = i % 2 === 0 ? [0, 6] : [6, 0];
    return line(i / 2, from, (i + 1) / 2, to);
  }),
});

/** Lines drawn one after the other, each across one patch that is there: what straight seams sew, in no regular way. */
export const stubs: Family = (patches) => {
  const random = seeded(patches);
  const size = 4 * Math.ceil(Math.sqrt(patches));
  const segments: Segment[] = [];
  const open: Point[][] = [rectangle(size, size)];
  // The patch that has waited longest is cut next, so that patches stay of about one size.
  for (let next = 0; open.length - next < patches; next += 1) {
    const { chord, halves } = cutAcross(open[next]!, random);
    segments.push(chord);
    open.push(...halves);
  }
  return { outline: rectangle(size, size), segments };
};

/** A convex polygon cut from a point amid its longest side to where that leaves about half of it on either side. */
function cutAcross(polygon: readonly Point[], random: () => number): { chord: Segment; halves: Point[][] } {
  const lengthOf = (i: number) => Math.hypot(turned(i + 1).x - turned(i).x, turned(i + 1).y - turned(i).y);
  const turned = (i: number) => polygon[i % polygon.length]!;
  const longest = range(polygon.length).reduce((best, i) => (lengthOf(i) > lengthOf(best) ? i : best));
  const p = between(turned(longest), turned(longest + 1), 0.4 + 0.2 * random());
  // The corners as seen from p, and the triangles that they make with it.
  const corners = range(polygon.length).map((i) => turned(longest + 1 + i));
  const triangles = corners.slice(1).map((q, i) => areaOf([p, corners[i]!, q]));
  let wanted = (0.4 + 0.2 * random()) * areaOf(polygon);
  let side = 0;
  while (wanted > triangles[side]!) {
    wanted -= triangles[side]!;
    side += 1;
  }
  // Not into a corner: a point that two lines share would be another drawing.
  const share = Math.min(0.9, Math.max(0.1, wanted / triangles[side]!));
  const q = between(corners[side]!, corners[side + 1]!, share);
  return {
    chord: { a: p, b: q },
    halves: [
      [p, ...corners.slice(0, side + 1), q],
      [q, ...corners.slice(side + 1), p],
    ],
  };
}

const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** Numbers in [0, 1) from a seed: the mulberry32 generator (public domain; from memory). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
