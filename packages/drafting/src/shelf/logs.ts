import type { Segment } from '@seamwright/geometry';
import { below, squareOf, upTo } from './drawn.ts';
import { pieced, seam } from './pieced.ts';
import { count, SIDE, share, startingPoint } from './starting-point.ts';

const ROUNDS = count('rounds', 'Rounds', 1, 8, 4);
const CENTRE = share('centre', 'Centre, of the side', 0.08, 0.5, 0.2);

/** How far the seams of a round's logs lie from the block's edge, the innermost round first. */
const depths = (side: number, rounds: number, centre: number): readonly number[] =>
  upTo(rounds).map((k) => (((1 - centre) * side) / 2) * ((rounds - k + 1) / rounds));

const logCabin = startingPoint({
  id: 'log-cabin',
  name: 'Log cabin',
  about: 'Logs go round the centre, each along the one before.',
  parameters: [SIDE, ROUNDS, CENTRE],
  draw: ({ side, rounds, centre }) => {
    const outline = squareOf(side);
    const seams = depths(side, rounds, centre).flatMap((d) => [
      seam.above(d),
      seam.rightOf(side - d),
      seam.below(side - d),
      seam.leftOf(d),
    ]);
    return { outline, splits: pieced(outline, seams) };
  },
});

const courthouseSteps = startingPoint({
  id: 'courthouse-steps',
  name: 'Courthouse steps',
  about: 'Logs on opposite sides of the centre, then on the other two.',
  parameters: [SIDE, ROUNDS, CENTRE],
  draw: ({ side, rounds, centre }) => {
    const outline = squareOf(side);
    const seams = depths(side, rounds, centre).flatMap((d) => [
      seam.leftOf(d),
      seam.rightOf(side - d),
      seam.above(d),
      seam.below(side - d),
    ]);
    return { outline, splits: pieced(outline, seams) };
  },
});

const halfLogCabin = startingPoint({
  id: 'half-log-cabin',
  name: 'Half log cabin',
  about: 'Logs on two sides of a corner square, so that they form chevrons.',
  parameters: [SIDE, ROUNDS, share('centre', 'Corner square, of the side', 0.08, 0.6, 0.2)],
  draw: ({ side, rounds, centre }) => {
    const outline = squareOf(side);
    const first = side * centre;
    const log = (side - first) / rounds;
    const seams = below(rounds).flatMap((k) => [
      seam.above(side - first - k * log),
      seam.rightOf(first + k * log),
    ]);
    return { outline, splits: pieced(outline, seams) };
  },
});

const pineapple = startingPoint({
  id: 'pineapple',
  name: 'Pineapple',
  about: 'Rounds of logs along the sides and across the corners in turn.',
  parameters: [
    SIDE,
    count('rounds', 'Rounds', 3, 8, 4),
    share('centre', 'Centre, of the side', 0.15, 0.4, 0.2),
  ],
  draw: ({ side, rounds, centre }) => {
    const outline = squareOf(side);
    const half = side / 2;
    const core = half * centre;
    const log = (half - core) / rounds;
    const seams = below(rounds).flatMap((k) => {
      const straight = core + k * log;
      // The first seam across a corner touches the corner of the centre square.
      const slanted = Math.SQRT2 * (core * Math.SQRT2 + k * log);
      return [
        seam.above(half - straight),
        seam.rightOf(half + straight),
        seam.below(half + straight),
        seam.leftOf(half - straight),
        ...acrossCorners(side, slanted),
      ];
    });
    return { outline, splits: pieced(outline, seams) };
  },
});

/** Seams across the four corners of a square; each cuts both axes through the middle at `reach` from it. */
function acrossCorners(side: number, reach: number): readonly Segment[] {
  const half = side / 2;
  const [left, right, top, bottom] = [
    { x: half - reach, y: half },
    { x: half + reach, y: half },
    { x: half, y: half - reach },
    { x: half, y: half + reach },
  ];
  return [
    { a: left, b: top },
    { a: top, b: right },
    { a: right, b: bottom },
    { a: bottom, b: left },
  ];
}

const squareInSquare = startingPoint({
  id: 'square-in-square',
  name: 'Square in a square',
  about: 'A square standing on its corner in a square, and so on inwards.',
  parameters: [SIDE, count('squares', 'Squares inside', 1, 6, 1)],
  draw: ({ side, squares }) => {
    const outline = squareOf(side);
    const half = side / 2;
    const seams = upTo(squares).flatMap((k) => {
      // Round k from the inside; the outermost, k = squares, stands on its corner in the block itself.
      const halvings = squares - k;
      const reach = half / 2 ** Math.floor(halvings / 2);
      if (halvings % 2 === 0) return acrossCorners(side, reach);
      const d = half - reach / 2;
      return [seam.above(d), seam.rightOf(side - d), seam.below(side - d), seam.leftOf(d)];
    });
    return { outline, splits: pieced(outline, seams) };
  },
});

const economy = startingPoint({
  id: 'economy',
  name: 'Economy',
  about: 'A square in a square in a square: the middle one half as wide as the block.',
  parameters: [SIDE],
  draw: ({ side }) => {
    const outline = squareOf(side);
    const d = side / 4;
    const middle = [seam.above(d), seam.rightOf(side - d), seam.below(side - d), seam.leftOf(d)];
    return { outline, splits: pieced(outline, [...middle, ...acrossCorners(side, side / 2)]) };
  },
});

export const LOGS = [logCabin, courthouseSteps, halfLogCabin, pineapple, squareInSquare, economy];
