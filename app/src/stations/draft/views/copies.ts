import {
  type Box,
  compose,
  type Polygon,
  rotation,
  SAME_COORDINATE,
  type Transform,
  translation,
} from '@seamwright/geometry';

/**
 * How copies of a block lie beside each other: `alternate` turns every other one a quarter, `pinwheel` turns four about
 * the corner that they share, `mirrored` turns every other column and row over.
 */
export type Turning = 'same' | 'alternate' | 'pinwheel' | 'mirrored';

export const isSquare = ({ minX, minY, maxX, maxY }: Box): boolean =>
  Math.abs(maxX - minX - (maxY - minY)) <= SAME_COORDINATE;

/** Whether the outline fills the box round it: only then do copies meet along their edges. */
export const fillsBox = (outline: Polygon, { minX, minY, maxX, maxY }: Box): boolean =>
  outline.every(
    ({ x, y }) =>
      Math.min(Math.abs(x - minX), Math.abs(x - maxX), Math.abs(y - minY), Math.abs(y - maxY)) <=
      SAME_COORDINATE,
  ) &&
  [minX, maxX].every((cornerX) =>
    [minY, maxY].every((cornerY) =>
      outline.some(
        ({ x, y }) => Math.abs(x - cornerX) <= SAME_COORDINATE && Math.abs(y - cornerY) <= SAME_COORDINATE,
      ),
    ),
  );

/** How many copies lie to the left of the one that is drawn on, and above it: that one is the middle one, or next to it. */
const before = (count: number): number => Math.floor((count - 1) / 2);

/** The box round `count` × `count` copies, of which `box` holds the one that is drawn on. */
export function boxOfCopies({ minX, minY, maxX, maxY }: Box, count: number): Box {
  const [width, height] = [maxX - minX, maxY - minY];
  const [less, more] = [before(count), count - 1 - before(count)];
  return {
    minX: minX - less * width,
    minY: minY - less * height,
    maxX: maxX + more * width,
    maxY: maxY + more * height,
  };
}

/**
 * Where the other copies lie, as maps from the block that is drawn on, which itself is left out. A block that is not
 * square is turned by half a turn where a square one is by a quarter: otherwise it would lie across its neighbours.
 */
export function otherCopies(box: Box, count: number, turning: Turning): readonly Transform[] {
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const steps = Array.from({ length: count }, (_, i) => i - before(count));
  return steps.flatMap((down) =>
    steps
      .filter((across) => across !== 0 || down !== 0)
      .map((across) =>
        compose(
          lie(turning, across % 2 !== 0, down % 2 !== 0, middle, isSquare(box)),
          translation(across * width, down * height),
        ),
      ),
  );
}

type Middle = { readonly x: number; readonly y: number };

function lie(
  turning: Turning,
  oddAcross: boolean,
  oddDown: boolean,
  middle: Middle,
  square: boolean,
): Transform {
  const turned = (quarters: number) =>
    rotation(square ? 90 * quarters : quarters % 2 === 0 ? 0 : 180, middle);
  switch (turning) {
    case 'same':
      return turned(0);
    case 'alternate':
      return turned(oddAcross === oddDown ? 0 : 1);
    case 'pinwheel':
      return turned(oddDown ? (oddAcross ? 2 : 3) : oddAcross ? 1 : 0);
    case 'mirrored': {
      const [a, d] = [oddAcross ? -1 : 1, oddDown ? -1 : 1];
      return { a, b: 0, c: 0, d, e: middle.x * (1 - a), f: middle.y * (1 - d) };
    }
  }
}
