import fc from 'fast-check';
import { type Block, block, rectangle } from './blocks.ts';

/** A point on the rim of a rectangle: `share` of the way round, from the top left corner clockwise. */
function onRim(width: number, height: number, share: number): readonly [number, number] {
  const way = share * 2 * (width + height);
  if (way < width) return [way, 0];
  if (way < width + height) return [width, way - width];
  if (way < 2 * width + height) return [2 * width + height - way, height];
  return [0, 2 * (width + height) - way];
}

/** Even from 0 to 1: fast-check's own doubles come mostly from next to the bounds, where a cut is no cut. */
const SHARES = 4096;
const share = fc.nat(SHARES).map((n) => n / SHARES);

const eighths = (largest: number): fc.Arbitrary<number> => fc.nat(8 * (largest - 1)).map((n) => 1 + n / 8);

/** Rectangles of 1 to `largest` inches, cut by up to four lines from rim to rim, that can be sewn. */
export const randomBlock = (largest: number): fc.Arbitrary<Block> =>
  fc
    .record({
      width: eighths(largest),
      height: eighths(largest),
      cuts: fc.array(fc.tuple(share, share), { minLength: 1, maxLength: 4 }),
    })
    .map(({ width, height, cuts }) =>
      block(
        rectangle(width, height),
        cuts.map(([from, to]) => [...onRim(width, height, from), ...onRim(width, height, to)] as const),
      ),
    )
    .filter(({ plan }) => plan.verdict !== 'not sewable');
