import { FARTHEST_POINT, LARGEST_SIZE } from '@seamwright/geometry';
import * as z from 'zod/mini';
import { FABRIC_WIDTH_RANGE, GRID_PARTS, SWATCH_WIDTH_RANGE } from './limits.ts';
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
  .check(
    z.regex(
      /^(?!.*\d{13})[A-Za-z][A-Za-z0-9:._-]{0,63}$/,
      'has to be an id: a letter, then letters, digits and : . _ -',
    ),
  );

const whole = z.number().check(z.int('has to be a whole number'));
const atLeast = (least: number) => z.minimum(least, `has to be at least ${least}`);
const atMost = (most: number) => z.maximum(most, `has to be at most ${most}`);

const count = whole.check(atLeast(1));
const within = (least: number, most: number) => z.number().check(atLeast(least), atMost(most));

const point = z.strictObject({
  id,
  x: z.number(),
  y: z.number(),
  on: z.exactOptional(z.array(id)),
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
  fabric: z.exactOptional(id),
  fabrics: z.exactOptional(z.record(id, id)),
});

const twoPatches = z.readonly(z.tuple([id, id], 'has to hold two patches'));

const pin = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({ kind: z.literal('first'), patch: id }),
    z.strictObject({ kind: z.literal('before'), patch: id, than: id }),
    z.strictObject({ kind: z.literal('together'), patches: twoPatches }),
    z.strictObject({ kind: z.literal('apart'), patches: twoPatches }),
    z.strictObject({
      kind: z.literal('letter'),
      patch: id,
      letter: z.string().check(z.regex(/^[A-Z]{1,2}$/, 'has to be one or two capital letters')),
    }),
  ],
  'has to be "first", "before", "together", "apart" or "letter"',
);

const sewing = z.strictObject({
  pins: z.array(pin),
  choice: z.enum(['fewest foundations', 'most repetition', 'small sections']),
  mostPatches: count,
  partialSeams: z.boolean(),
});

const pressing = z.strictObject({ patches: twoPatches, under: z.enum(['first', 'second', 'open']) });

/** In a file, blocks name their picture, so that blocks that share it do not hold it twice. */
const tracing = z.strictObject({
  picture: id,
  x: within(-FARTHEST_POINT, FARTHEST_POINT),
  y: within(-FARTHEST_POINT, FARTHEST_POINT),
  width: within(PICTURE_WIDTH_RANGE.least, PICTURE_WIDTH_RANGE.most),
  turn: z.number().check(z.gt(-180, 'has to be above -180'), atMost(180)),
  strength: within(LEAST_STRENGTH, 1),
  locked: z.boolean(),
  shown: z.boolean(),
});

const picture = z.strictObject({
  name: z.string(),
  width: count,
  height: count,
  data: z
    .string()
    .check(
      z.maxLength(MOST_PICTURE_DATA, `has to have at most ${MOST_PICTURE_DATA} characters`),
      z.regex(
        /^data:image\/(?:png|jpeg|webp);base64,[A-Za-z0-9+/]+={0,2}$/,
        'has to be a picture as data:image/png;base64,… (or jpeg, webp)',
      ),
    ),
});

const block = z.strictObject({
  id,
  name: z.string(),
  drawing,
  grid: z.number().check(z.gt(0, 'has to be above 0'), atMost(LARGEST_SIZE)),
  gridParts: z.exactOptional(whole.check(atLeast(GRID_PARTS.least), atMost(GRID_PARTS.most))),
  patches: z.array(patch),
  sewing: z.exactOptional(sewing),
  pressings: z.exactOptional(z.array(pressing)),
  tracing: z.exactOptional(tracing),
});

/** As in tracings: the picture by its name in the file. */
const swatch = z.strictObject({
  picture: id,
  width: within(SWATCH_WIDTH_RANGE.least, SWATCH_WIDTH_RANGE.most),
});

const fabric = z.strictObject({
  id,
  name: z.string(),
  colour: z.string().check(z.regex(/^#[0-9a-f]{6}$/, 'has to be a colour: # and six of 0 to 9 and a to f')),
  width: z.exactOptional(within(FABRIC_WIDTH_RANGE.least, FABRIC_WIDTH_RANGE.most)),
  grain: z.exactOptional(z.enum(['straight', 'one way'])),
  swatch: z.exactOptional(swatch),
});

const colourway = z.strictObject({ id, name: z.string() });

export const patternSchema = z.strictObject({
  format: z.literal('seamwright-pattern/1'),
  title: z.string(),
  unit: z.enum(['in', 'cm']),
  fabrics: z.exactOptional(z.array(fabric)),
  colourways: z.exactOptional(z.array(colourway).check(z.minLength(2, 'has to hold two or more'))),
  blocks: z.array(block).check(z.minLength(1, 'has to hold a block')),
  pictures: z.exactOptional(z.record(id, picture)),
});

export type FilePattern = z.infer<typeof patternSchema>;
export type FileBlock = FilePattern['blocks'][number];
