import type { Segment } from '@seamwright/geometry';
import {
  aboutTheMiddle,
  below,
  cellLines,
  fourTimes,
  line,
  onStops,
  QUARTERED,
  shifted,
  squareOf,
} from './drawn.ts';
import { SIDE, type StartingPoint, share, startingPoint } from './starting-point.ts';

const MIDDLE = share('middle', 'Middle, of the side', 0.2, 0.6, 1 / 3);

/** A block on three rows and columns of which the middle ones may be wider or narrower; drawn on cells of size 1. */
const onNine = (id: string, name: string, about: string, lines: readonly Segment[]): StartingPoint =>
  startingPoint({
    id,
    name,
    about,
    parameters: [SIDE, MIDDLE],
    draw: ({ side, middle }) => ({
      outline: squareOf(side),
      splits: onStops([...cellLines(3), ...lines], aboutTheMiddle(side, middle)),
    }),
  });

const ninePatch = onNine('nine-patch', 'Nine-patch', 'Nine squares.', []);

const shooFly = onNine(
  'shoo-fly',
  'Shoo fly',
  'A nine-patch with halved corners.',
  fourTimes([line(0, 1, 1, 0)], 3),
);

const friendshipStar = onNine(
  'friendship-star',
  'Friendship star',
  'A nine-patch with halved squares on the four sides: a star of four points that turns.',
  fourTimes([line(1, 0, 2, 1)], 3),
);

const ohioStar = onNine(
  'ohio-star',
  'Ohio star',
  'A nine-patch with quartered squares on the four sides: a star of eight points.',
  fourTimes([line(1, 0, 2, 1), line(2, 0, 1, 1)], 3),
);

const cardTrick = onNine('card-trick', 'Card trick', 'Four cards, each half over the next.', [
  ...fourTimes([line(0, 1, 1, 0), line(1, 0, 2, 1), line(1.5, 0.5, 2, 0)], 3),
  line(1, 1, 2, 2),
  line(2, 1, 1, 2),
]);

const churnDash = startingPoint({
  id: 'churn-dash',
  name: 'Churn dash',
  about: 'A nine-patch with halved corners and two rails on each side.',
  parameters: [SIDE, MIDDLE, share('rail', 'Outer rail, of a rail square', 0.25, 0.75, 0.5)],
  draw: ({ side, middle, rail }) => ({
    outline: squareOf(side),
    splits: onStops(
      [...cellLines(3), ...fourTimes([line(0, 1, 1, 0), line(1, rail, 2, rail)], 3)],
      aboutTheMiddle(side, middle),
    ),
  }),
});

const mapleLeaf = startingPoint({
  id: 'maple-leaf',
  name: 'Maple leaf',
  about: 'A leaf of squares and halved squares, its stem across one corner.',
  parameters: [SIDE, share('stem', 'Stem, of its square', 0.1, 0.4, 0.2)],
  draw: ({ side, stem }) => ({
    outline: squareOf(side),
    splits: onStops(
      [
        ...cellLines(3),
        line(0, 1, 1, 0),
        line(1, 1, 2, 0),
        line(2, 2, 3, 1),
        line(2, 3, 3, 2),
        line(0, 3 - stem, 1 - stem, 2),
        line(stem, 3, 1, 2 + stem),
      ],
      aboutTheMiddle(side, 1 / 3),
    ),
  }),
});

const CHAIN = [0, 2].flatMap((x) => [0, 2].map((y) => [x, y] as const)).concat([[1, 1]]);

const jacobsLadder = startingPoint({
  id: 'jacobs-ladder',
  name: 'Jacob’s ladder',
  about: 'Five four-patches in a chain, and four halved squares between them.',
  parameters: [SIDE],
  draw: ({ side }) => ({
    outline: squareOf(side),
    splits: onStops(
      [
        ...cellLines(3),
        ...CHAIN.flatMap(([x, y]) => shifted(QUARTERED, x, y)),
        line(1, 0, 2, 1),
        line(0, 1, 1, 2),
        line(2, 1, 3, 2),
        line(1, 2, 2, 3),
      ],
      aboutTheMiddle(side, 1 / 3),
    ),
  }),
});

const doubleNinePatch = startingPoint({
  id: 'double-nine-patch',
  name: 'Double nine-patch',
  about: 'A nine-patch, five of its squares nine-patches themselves.',
  parameters: [SIDE],
  draw: ({ side }) => {
    const small = below(2).flatMap((k) => {
      const at = (k + 1) / 3;
      return [line(at, 0, at, 1), line(0, at, 1, at)];
    });
    return {
      outline: squareOf(side),
      splits: onStops(
        [...cellLines(3), ...CHAIN.flatMap(([x, y]) => shifted(small, x, y))],
        aboutTheMiddle(side, 1 / 3),
      ),
    };
  },
});

export const NINE_PATCHES = [
  ninePatch,
  doubleNinePatch,
  shooFly,
  friendshipStar,
  ohioStar,
  churnDash,
  cardTrick,
  mapleLeaf,
  jacobsLadder,
];
