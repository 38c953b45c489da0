import { fail, LARGEST_SIZE, type LengthUnit, ok, parseLength, type Result } from '@seamwright/geometry';

const MINUS = /^\s*[-−–]\s*/;

/** A coordinate as it is typed, in inches: a length, with a minus sign for what lies before the block's edge. */
export function readPlace(typed: string, unit: LengthUnit): Result<number> {
  const length = parseLength(typed.replace(MINUS, ''), unit);
  if (!length.ok) return length;
  if (length.value > LARGEST_SIZE)
    return fail('That is too far away from the block', '', `Stay within ${LARGEST_SIZE} in`);
  return ok(MINUS.test(typed) ? 0 - length.value : length.value);
}
