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

const eighths = (value: number): number => Math.round(value * 8) / 8;

/** Rectangles of 1 to `largest` inches, cut by up to four lines from rim to rim, that can be sewn. */
export const randomBlock = (largest: number): fc.Arbitrary<Block> =>
  fc
    .record({
      width: fc.double({ min: 1, max: largest, noNaN: true }).map(eighths),
      height: fc.double({ min: 1, max: largest, noNaN: true }).map(eighths),
      cuts: fc.array(
        fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
        {
          minLength: 1,
          maxLength: 4,
        },
      ),
    })
    .map(({ width, height, cuts }) =>
      block(
        rectangle(width, height),
        cuts.map(([from, to]) => [...onRim(width, height, from), ...onRim(width, height, to)] as const),
      ),
    )
    .filter(({ plan }) => plan.verdict !== 'not sewable');
