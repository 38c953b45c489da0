import {
  boundingBox,
  fail,
  LARGEST_SIZE,
  ok,
  type Polygon,
  type Result,
  SAME_COORDINATE,
} from '@seamwright/geometry';

/** Finished width and height, inches. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Width and height of the upright rectangle round a shape, inches. */
export function sizeOf(polygon: Polygon): Size {
  const { minX, minY, maxX, maxY } = boundingBox(polygon);
  return { width: maxX - minX, height: maxY - minY };
}

const range = `Give a length above 0 and up to ${LARGEST_SIZE} in`;

/** The length itself when a block can have it; `name` says which one it is, e.g. `width`. */
export function checkSize(value: number, name: string): Result<number> {
  if (Number.isNaN(value)) return fail(`The ${name} is not a number`, '', range);
  if (value <= 0) return fail(`The ${name} is ${value === 0 ? '0' : 'negative'}`, '', range);
  if (value > LARGEST_SIZE + SAME_COORDINATE)
    return fail(`The ${name} is more than ${LARGEST_SIZE} in`, '', range);
  return ok(value);
}

/** Checks several sizes by their names; the first bad one is told. */
export function checkSizes(sizes: Readonly<Record<string, number>> | Size): Result<unknown> {
  for (const [name, value] of Object.entries(sizes)) {
    const result = checkSize(value, name);
    if (!result.ok) return result;
  }
  return ok(sizes);
}
