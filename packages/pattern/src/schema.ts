import { LARGEST_SIZE } from '@seamwright/geometry';
import { z } from 'zod';

/**
 * The form of a pattern file, field by field; what fields say of each other is looked at afterwards. Strict: a
 * field that is not known is refused rather than lost on the next save. The messages go on after the field's name.
 *
 * Texts have no limit of length of their own: what can be typed and saved must open again.
 */

/**
 * Letters, digits and a few signs. Numbers in ids are counted on, so they stay below what counts exactly; names
 * that mean something to JavaScript (`__proto__`) do not start with a letter.
 */
const id = z
  .string()
  .regex(
    /^(?!.*\d{13})[A-Za-z][A-Za-z0-9:._-]{0,63}$/,
    'has to be an id: a letter, then letters, digits and : . _ -',
  );

const point = z.strictObject({
  id,
  x: z.number(),
  y: z.number(),
  on: z.array(id).exactOptional(),
});

const drawing = z.strictObject({
  points: z.record(id, point),
  outline: z.array(id),
  splits: z.array(z.strictObject({ id, from: id, to: id })),
});

const patch = z.strictObject({
  id,
  signature: z.string(),
  at: z.strictObject({ x: z.number(), y: z.number() }),
  note: z.string(),
  fabric: id.exactOptional(),
});

const twoPatches = z.tuple([id, id]).readonly();

const pin = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('first'), patch: id }),
  z.strictObject({ kind: z.literal('before'), patch: id, than: id }),
  z.strictObject({ kind: z.literal('together'), patches: twoPatches }),
  z.strictObject({ kind: z.literal('apart'), patches: twoPatches }),
  z.strictObject({
    kind: z.literal('letter'),
    patch: id,
    letter: z.string().regex(/^[A-Z]{1,2}$/, 'has to be one or two capital letters'),
  }),
]);

const sewing = z.strictObject({
  pins: z.array(pin),
  choice: z.enum(['fewest foundations', 'most repetition', 'small sections']),
  mostPatches: z.number().int('has to be a whole number').min(1, 'has to be at least 1'),
  partialSeams: z.boolean(),
});

const block = z.strictObject({
  id,
  name: z.string(),
  drawing,
  grid: z.number().positive('has to be above 0').max(LARGEST_SIZE, `has to be at most ${LARGEST_SIZE}`),
  patches: z.array(patch),
  sewing: sewing.exactOptional(),
});

const fabric = z.strictObject({
  id,
  name: z.string(),
  colour: z.string().regex(/^#[0-9a-f]{6}$/, 'has to be a colour: # and six of 0 to 9 and a to f'),
});

export const patternSchema = z.strictObject({
  format: z.literal('seamwright-pattern/1'),
  title: z.string(),
  unit: z.enum(['in', 'cm']),
  fabrics: z.array(fabric).exactOptional(),
  blocks: z.array(block).min(1, 'has to hold a block'),
});
