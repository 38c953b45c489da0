import {
  boundingBox,
  checkLength,
  fail,
  formatLength,
  ok,
  type Polygon,
  type Result,
  SIZE_RANGE,
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

/** Whether a block can have these sizes, inches; the first that it cannot have is told by its name, e.g. `width`. */
export function checkSizes(sizes: Readonly<Record<string, number>> | Size): Result<unknown> {
  for (const [name, value] of Object.entries(sizes)) {
    if (Number.isNaN(value)) return fail(`The ${name} is not a number`, '', 'Give a length such as 6 1/2');
    if (checkLength(value, 'in', SIZE_RANGE).ok) continue;
    const [least, most] = [SIZE_RANGE.least, SIZE_RANGE.most].map((bound) => formatLength(bound, 'in'));
    const shown = Number.isFinite(value) ? formatLength(value, 'in') : 'without end';
    return fail(`The ${name} is ${shown}`, '', `Give a length from ${least} to ${most}`);
  }
  return ok(sizes);
}
