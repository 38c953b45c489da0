import {
  boundingBox,
  POINTS_PER_INCH,
  type Polygon,
  rotation,
  transformPolygon,
  translation,
} from '@seamwright/geometry';
import { grownArea } from '../src/packing/least-sheets.ts';
import { type Packable, wayOver } from '../src/packing/placement.ts';

/** A shape to be packed, without any words. */
export interface Shape extends Packable {
  readonly name: number;
  /** As it is drawn, its corner at (0, 0). Points. */
  readonly outline: Polygon<'page'>;
}

/** The shape in the four quarter turns, those that cover the same once. */
export function shapeOf(outline: Polygon<'page'>, name: number, gap: number): Shape {
  const turns = isRectangle(outline) ? [0, 90] : [0, 90, 180, 270];
  const ways = turns.map((degrees) => {
    const turned = transformPolygon(rotation<'page'>(degrees), outline);
    const { minX, minY, maxX, maxY } = boundingBox(turned);
    const atOrigin = transformPolygon(translation<'page', 'page'>(-minX, -minY), turned);
    const size = { width: maxX - minX, height: maxY - minY };
    return { ...wayOver([atOrigin], size, degrees === 0), outlines: [atOrigin] };
  });
  return { name, outline, ways, grown: grownArea(outline, gap / 2) };
}

const isRectangle = (outline: Polygon<'page'>): boolean =>
  outline.length === 4 &&
  outline.every((a, i) => {
    const b = outline[(i + 1) % 4]!;
    return a.x === b.x || a.y === b.y;
  });

export type Random = () => number;

/** Linear congruence, the constants of Numerical Recipes (from memory): the same shapes in every run. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

type Corner = readonly [number, number];
export type Maker = (side: () => number, random: Random) => readonly Corner[];

const rectangle = (w: number, h: number): readonly Corner[] => [
  [0, 0],
  [w, 0],
  [w, h],
  [0, h],
];

/** What sections of blocks look like. `side` gives a length, inches. */
export const MAKERS = {
  squares: (side) => {
    const w = side();
    return rectangle(w, w);
  },
  rectangles: (side) => rectangle(side(), side()),
  /** Right-angled ones, half of them with equal legs, and isosceles ones. */
  triangles: (side, random) => {
    const [w, kind] = [side(), random()];
    const h = kind < 1 / 3 ? w : side();
    return kind < 2 / 3
      ? [
          [0, 0],
          [w, 0],
          [0, h],
        ]
      : [
          [0, h],
          [w / 2, 0],
          [w, h],
        ];
  },
  /** Rectangles with one or two corners cut off aslant. */
  'odd polygons': (side, random) => {
    let corners = rectangle(side(), side());
    for (let cuts = random() < 0.5 ? 1 : 2; cuts > 0; cuts--) corners = cornerCut(corners, random);
    return corners;
  },
} satisfies Record<string, Maker>;

function cornerCut(corners: readonly Corner[], random: Random): readonly Corner[] {
  const at = Math.floor(random() * corners.length);
  const toward = (other: Corner, share: number): Corner => {
    const [x, y] = corners[at]!;
    return [x + (other[0] - x) * share, y + (other[1] - y) * share];
  };
  const before = corners[(at + corners.length - 1) % corners.length]!;
  const after = corners[(at + 1) % corners.length]!;
  return [
    ...corners.slice(0, at),
    toward(before, 0.25 + random() / 2),
    toward(after, 0.25 + random() / 2),
    ...corners.slice(at + 1),
  ];
}

/** Shapes of the makers in turn; sides from `least` to `most` inches, twice as many of each size as of twice that size. */
export function shapes(
  makers: readonly Maker[],
  count: number,
  [least, most]: readonly [number, number],
  seed: number,
  gap: number,
): readonly Shape[] {
  const random = randomFrom(seed);
  // Cutting lines of finished sections come in any size: no rounding to eighths, which would let more of them match.
  const side = () => least / (1 - random() * (1 - least / most));
  return Array.from({ length: count }, (_, i) => {
    const corners = makers[i % makers.length]!(side, random);
    const points = corners.map(([x, y]) => ({ x: x * POINTS_PER_INCH, y: y * POINTS_PER_INCH }));
    return shapeOf(points, i, gap);
  });
}
