import type { Segment } from '@seamwright/geometry';
import { below, cellLines, enlarged, fourTimes, line, QUARTERED, shifted, squareOf, upTo } from './drawn.ts';
import { count, type Parameter, SIDE, type StartingPoint, share, startingPoint } from './starting-point.ts';

/** A block drawn on `cells` × `cells` equal cells of size 1. */
const onCells = (
  id: string,
  name: string,
  about: string,
  cells: number,
  lines: readonly Segment[],
): StartingPoint =>
  startingPoint({
    id,
    name,
    about,
    parameters: [SIDE],
    draw: ({ side }) => ({ outline: squareOf(side), splits: enlarged(lines, side / cells) }),
  });

const falling = (n: number): Segment => line(0, 0, n, n);
const rising = (n: number): Segment => line(0, n, n, 0);

const fourPatch = onCells('four-patch', 'Four-patch', 'Four squares.', 2, cellLines(2));

const doubleFourPatch = onCells(
  'double-four-patch',
  'Double four-patch',
  'Four squares, two of them four-patches themselves.',
  2,
  [...cellLines(2), ...QUARTERED, ...shifted(QUARTERED, 1, 1)],
);

const checkerboard = startingPoint({
  id: 'checkerboard',
  name: 'Checkerboard',
  about: 'Squares in rows and columns.',
  parameters: [SIDE, count('squares', 'Squares each way', 3, 8, 5)],
  draw: ({ side, squares }) => ({
    outline: squareOf(side),
    splits: enlarged(cellLines(squares), side / squares),
  }),
});

const hourglass = onCells('hourglass', 'Hourglass', 'A square cut from corner to corner both ways.', 2, [
  falling(2),
  rising(2),
]);

const pinwheel = onCells('pinwheel', 'Pinwheel', 'Four halved squares that turn about the middle.', 2, [
  ...cellLines(2),
  falling(2),
  rising(2),
]);

const brokenDishes = startingPoint({
  id: 'broken-dishes',
  name: 'Broken dishes',
  about: 'Halved squares in fours, their points together.',
  parameters: [SIDE, count('dishes', 'Fours each way', 1, 3, 2)],
  draw: ({ side, dishes: n }) => {
    const size = 2 * n;
    const diagonals = below(n).flatMap((k) => {
      const over = 2 * k;
      const down = [line(over, 0, size, size - over), line(size - over, 0, 0, size - over)];
      return k === 0 ? down : [...down, line(0, over, size - over, size), line(size, over, over, size)];
    });
    return { outline: squareOf(side), splits: enlarged([...cellLines(size), ...diagonals], side / size) };
  },
});

/** Two geese that fly to the right, in a square of size 2 at the origin. */
const TWO_GEESE = [line(1, 0, 1, 2), ...[0, 1].flatMap((x) => [line(x, 0, x + 1, 1), line(x, 2, x + 1, 1)])];

const dutchmansPuzzle = onCells(
  'dutchmans-puzzle',
  'Dutchman’s puzzle',
  'Four pairs of geese that fly round the middle.',
  4,
  [line(2, 0, 2, 4), line(0, 2, 4, 2), ...fourTimes(TWO_GEESE, 4)],
);

const flockOfGeese = onCells(
  'flock-of-geese',
  'Flock of geese',
  'Two large halved squares and two fours of small ones.',
  4,
  [
    line(2, 0, 2, 4),
    line(0, 2, 4, 2),
    line(2, 2, 4, 0),
    line(0, 4, 2, 2),
    ...[0, 2].flatMap((x) =>
      shifted(
        [line(1, 0, 1, 2), line(0, 1, 2, 1), line(0, 1, 1, 0), line(0, 2, 2, 0), line(1, 2, 2, 1)],
        x,
        x,
      ),
    ),
  ],
);

const kaleidoscope = startingPoint({
  id: 'kaleidoscope',
  name: 'Kaleidoscope',
  about: 'Eight wedges that meet in the middle, and four corners.',
  // 1 / (2 + √2) makes all wedges alike.
  parameters: [SIDE, share('corner', 'Corner, of the side', 0.15, 0.4, 1 / (2 + Math.SQRT2))],
  draw: ({ side, corner }) => {
    const c = side * corner;
    const d = side - c;
    return {
      outline: squareOf(side),
      splits: [
        line(c, 0, d, side),
        line(d, 0, c, side),
        line(0, c, side, d),
        line(0, d, side, c),
        ...fourTimes([line(c, 0, 0, c)], side),
      ],
    };
  },
});

const sawtoothStar = startingPoint({
  id: 'sawtooth-star',
  name: 'Sawtooth star',
  about: 'A square with two points on each side, and four corner squares.',
  parameters: [SIDE, share('corner', 'Corner square, of the side', 0.15, 0.4, 0.25)],
  draw: ({ side, corner }) => {
    const c = side * corner;
    const d = side - c;
    const points = fourTimes([line(c, 0, side / 2, c), line(side / 2, c, d, 0)], side);
    return {
      outline: squareOf(side),
      splits: [line(c, 0, c, side), line(d, 0, d, side), line(0, c, side, c), line(0, d, side, d), ...points],
    };
  },
});

const CLAWS: Parameter<'claws'> = count('claws', 'Claws on a side', 2, 4, 2);

const bearsPaw = startingPoint({
  id: 'bears-paw',
  name: 'Bear’s paw',
  about: 'Four paws: a large square with claws on two sides; strips between them.',
  parameters: [SIDE, CLAWS, share('strip', 'Strip between, of the side', 0.05, 0.25, 1 / 7)],
  draw: ({ side, claws, strip }) => {
    const between = side * strip;
    const paw = (side - between) / 2;
    const cell = paw / (claws + 1);
    const far = paw + between;
    // The paw in the top left corner; its claws lie on the block's edges.
    const cuts = upTo(claws).flatMap((k) => [
      line(k, 0, k, 1),
      line(k, 1, k + 1, 0),
      ...(k > 1 ? [line(0, k, 1, k)] : []),
      line(1, k, 0, k + 1),
    ]);
    const onePaw = enlarged([line(0, 1, claws + 1, 1), line(1, 1, 1, claws + 1), ...cuts], cell);
    return {
      outline: squareOf(side),
      splits: [
        line(0, paw, side, paw),
        line(0, far, side, far),
        line(paw, 0, paw, side),
        line(far, 0, far, side),
        ...fourTimes(onePaw, side),
      ],
    };
  },
});

const basket = startingPoint({
  id: 'basket',
  name: 'Basket',
  about: 'A halved square with a row of triangles on two sides, on a base.',
  parameters: [SIDE, count('triangles', 'Triangles on a side', 2, 4, 2)],
  draw: ({ side, triangles: n }) => {
    const size = n + 2;
    const inner = n + 1;
    const rows = upTo(n).flatMap((k) => [
      line(k, 0, k, 1),
      line(k, 1, k + 1, 0),
      ...(k > 1 ? [line(0, k, 1, k)] : []),
      line(0, k + 1, 1, k),
    ]);
    const lines = [
      line(0, inner, size, inner),
      line(inner, 0, inner, inner),
      line(0, 1, inner, 1),
      line(1, 1, 1, inner),
      ...rows,
      // The basket's rim.
      line(1, inner, inner, 1),
      // Its feet, each a halved square, and the corner between them.
      line(inner, n, size, n),
      line(inner, inner, size, n),
      line(n, inner, n, size),
      line(n, size, inner, inner),
      line(inner, inner, inner, size),
    ];
    return { outline: squareOf(side), splits: enlarged(lines, side / size) };
  },
});

const birdsInTheAir = startingPoint({
  id: 'birds-in-the-air',
  name: 'Birds in the air',
  about: 'A plain half and a half full of small triangles.',
  parameters: [SIDE, count('birds', 'Birds along the edge', 2, 5, 3)],
  draw: ({ side, birds: n }) => {
    const inner = upTo(n - 1).flatMap((k) => [line(k, 0, k, n - k), line(0, k, n - k, k), line(k, 0, 0, k)]);
    return { outline: squareOf(side), splits: enlarged([rising(n), ...inner], side / n) };
  },
});

export const FOUR_PATCHES = [
  fourPatch,
  doubleFourPatch,
  checkerboard,
  hourglass,
  pinwheel,
  brokenDishes,
  dutchmansPuzzle,
  flockOfGeese,
  kaleidoscope,
  sawtoothStar,
  bearsPaw,
  basket,
  birdsInTheAir,
];
