import { LARGEST_SIZE } from '@seamwright/geometry';
import { z } from 'zod';
import { FABRIC_WIDTH_RANGE, FARTHEST_POINT, GRID_PARTS, SWATCH_WIDTH_RANGE } from './limits.ts';
import { LEAST_STRENGTH, MOST_PICTURE_DATA, PICTURE_WIDTH_RANGE } from './tracing/limits.ts';

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
  fabrics: z.record(id, id).exactOptional(),
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

const pressing = z.strictObject({ patches: twoPatches, under: z.enum(['first', 'second', 'open']) });

const within = (least: number, most: number) =>
  z.number().min(least, `has to be at least ${least}`).max(most, `has to be at most ${most}`);

/** In a file, blocks name their picture, so that blocks that share it do not hold it twice. */
const tracing = z.strictObject({
  picture: id,
  x: within(-FARTHEST_POINT, FARTHEST_POINT),
  y: within(-FARTHEST_POINT, FARTHEST_POINT),
  width: within(PICTURE_WIDTH_RANGE.least, PICTURE_WIDTH_RANGE.most),
  turn: z.number().gt(-180, 'has to be above -180').max(180, 'has to be at most 180'),
  strength: within(LEAST_STRENGTH, 1),
  locked: z.boolean(),
  shown: z.boolean(),
});

const pixels = z.number().int('has to be a whole number').min(1, 'has to be at least 1');

const picture = z.strictObject({
  name: z.string(),
  width: pixels,
  height: pixels,
  data: z
    .string()
    .max(MOST_PICTURE_DATA, `has to have at most ${MOST_PICTURE_DATA} characters`)
    .regex(
      /^data:image\/(?:png|jpeg|webp);base64,[A-Za-z0-9+/]+={0,2}$/,
      'has to be a picture as data:image/png;base64,… (or jpeg, webp)',
    ),
});

const block = z.strictObject({
  id,
  name: z.string(),
  drawing,
  grid: z.number().positive('has to be above 0').max(LARGEST_SIZE, `has to be at most ${LARGEST_SIZE}`),
  gridParts: z
    .number()
    .int('has to be a whole number')
    .min(GRID_PARTS.least, `has to be at least ${GRID_PARTS.least}`)
    .max(GRID_PARTS.most, `has to be at most ${GRID_PARTS.most}`)
    .exactOptional(),
  patches: z.array(patch),
  sewing: sewing.exactOptional(),
  pressings: z.array(pressing).exactOptional(),
  tracing: tracing.exactOptional(),
});

/** As in tracings: the picture by its name in the file. */
const swatch = z.strictObject({
  picture: id,
  width: within(SWATCH_WIDTH_RANGE.least, SWATCH_WIDTH_RANGE.most),
});

const fabric = z.strictObject({
  id,
  name: z.string(),
  colour: z.string().regex(/^#[0-9a-f]{6}$/, 'has to be a colour: # and six of 0 to 9 and a to f'),
  width: within(FABRIC_WIDTH_RANGE.least, FABRIC_WIDTH_RANGE.most).exactOptional(),
  grain: z.enum(['straight', 'one way']).exactOptional(),
  swatch: swatch.exactOptional(),
});

const colourway = z.strictObject({ id, name: z.string() });

export const patternSchema = z.strictObject({
  format: z.literal('seamwright-pattern/1'),
  title: z.string(),
  unit: z.enum(['in', 'cm']),
  fabrics: z.array(fabric).exactOptional(),
  colourways: z.array(colourway).min(2, 'has to hold two or more').exactOptional(),
  blocks: z.array(block).min(1, 'has to hold a block'),
  pictures: z.record(id, picture).exactOptional(),
});

export type FilePattern = z.infer<typeof patternSchema>;
export type FileBlock = FilePattern['blocks'][number];
