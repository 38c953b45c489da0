import { fail, ok, type Result } from '@seamwright/geometry';
import type * as z from 'zod/mini';
import { checkDrawing, repeated } from './check-drawing.ts';
import { placeOfJsonError } from './json-place.ts';
import { tooLarge } from './limits.ts';
import { bringUp, CURRENT_VERSION } from './migrations.ts';
import type { Pattern } from './pattern.ts';
import { patternSchema } from './schema.ts';
import { takePictures } from './tracing/file-pictures.ts';

const FORMAT = /^seamwright-pattern\/([1-9]\d{0,5})$/;
const MEND = 'Open a saved copy of the pattern, or mend the file at that place';

export interface ParsedPattern {
  readonly pattern: Pattern;
  /** What the maker should know of a file that was brought up from an older version; usually empty. */
  readonly notes: readonly string[];
}

/**
 * Reads the text of a pattern file. All or nothing: a file that is cut short, not ours, of a later version, has
 * unknown fields or contradicts itself gives one Problem, with the place in the file.
 */
export function parsePattern(text: string): Result<ParsedPattern> {
  const tooLong = tooLarge(text.length);
  if (tooLong !== null) return { ok: false, problem: tooLong };

  let json: unknown;
  const plain = text.replace(/^\uFEFF/, '');
  try {
    json = JSON.parse(plain);
  } catch {
    return notJson(plain);
  }

  const format =
    typeof json === 'object' && json !== null ? (json as { format?: unknown }).format : undefined;
  const version = typeof format === 'string' ? FORMAT.exec(format)?.[1] : undefined;
  if (version === undefined) {
    return fail(
      'This is no pattern file of Seamwright',
      '',
      'Choose a file that Seamwright saved, or an SVG drawing',
    );
  }
  if (Number(version) > CURRENT_VERSION) {
    return fail(
      `The pattern was saved by a later version of Seamwright: its format is ${version}, and this version reads up to ${CURRENT_VERSION}`,
      '',
      'Update Seamwright and open it again',
    );
  }

  const { document, notes } = bringUp(json as object, Number(version));
  const parsed = patternSchema.safeParse(document);
  if (!parsed.success) return misfit(parsed.error.issues[0]!);
  const taken = takePictures(parsed.data);
  if (!taken.ok) return taken;
  const pattern = taken.value;
  return checkPattern(pattern) ?? ok({ pattern, notes });
}

/** What fields say of each other, block by block. */
function checkPattern({ blocks, fabrics = [], colourways = [] }: Pattern): ReturnType<typeof fail> | null {
  const fabric = repeated(fabrics.map(({ id }) => id));
  if (fabric !== undefined)
    return fail(`Two fabrics have the id "${fabric}"`, 'fabrics', 'Give one of them another');
  const isKnown = new Set(fabrics.map(({ id }) => id));
  const colourway = repeated(colourways.map(({ id }) => id));
  if (colourway !== undefined)
    return fail(`Two colourways have the id "${colourway}"`, 'colourways', 'Give one of them another');
  /** Those whose fabrics stand in `fabrics` of the patches. */
  const further = new Set(colourways.slice(1).map(({ id }) => id));
  const twice = repeated(blocks.map((block) => block.id));
  if (twice !== undefined)
    return fail(`Two blocks have the id "${twice}"`, 'blocks', 'Give one of them another');
  for (const [index, block] of blocks.entries()) {
    const path = `blocks[${index}]`;
    const drawing = checkDrawing(block.drawing);
    if (!drawing.ok) {
      const { what, where, remedy } = drawing.problem;
      return fail(what, `${path}.drawing, ${where}`, remedy);
    }
    const patch = repeated(block.patches.map(({ id }) => id));
    if (patch !== undefined) {
      return fail(`Two patches have the id "${patch}"`, `${path}.patches`, 'Give one of them another');
    }
    for (const { id, fabric: first, fabrics: others = {} } of block.patches) {
      const where = `${path}.patches, patch "${id}"`;
      const unknown = Object.keys(others).find((key) => !further.has(key));
      if (unknown !== undefined)
        return fail(
          `A patch has a fabric in a colourway that the pattern does not have, "${unknown}"`,
          where,
          'Add the colourway after the first, or take it off the patch',
        );
      const bare = [first, ...Object.values(others)].find((one) => one !== undefined && !isKnown.has(one));
      if (bare !== undefined)
        return fail(
          `A patch is cut from a fabric that the pattern does not have, "${bare}"`,
          where,
          'Add the fabric, or take it off the patch',
        );
    }
  }
  return null;
}

function notJson(text: string) {
  if (text.trim() === '') return fail('The file is empty', '', 'Open a saved copy of the pattern');
  if (/^\s*[^\s{]/.test(text)) {
    return fail(
      'This is no pattern file of Seamwright',
      'line 1',
      'Choose a file that Seamwright saved, or an SVG drawing',
    );
  }
  const { line, column, atEnd } = placeOfJsonError(text);
  const where = `line ${line}, column ${column}`;
  return atEnd
    ? fail('The pattern file is cut short', where, 'Open a saved copy of the pattern')
    : fail('The pattern file is not sound JSON', where, MEND);
}

function misfit(issue: z.core.$ZodIssue) {
  const where = pathText(issue.path);
  if (issue.code === 'unrecognized_keys') {
    return fail(
      `The pattern file has a field that is not known, "${issue.keys[0]}"`,
      where === '' ? 'at the top' : where,
      'Update Seamwright if a later version wrote the file, or take the field out',
    );
  }
  if (issue.code === 'invalid_type') {
    const wanted = {
      record: 'an object',
      object: 'an object',
      array: 'a list',
      tuple: 'a list',
      boolean: 'true or false',
      number: 'a number',
      string: 'a text',
      int: 'a whole number',
    };
    return fail(
      `A field of the pattern file has to be ${wanted[issue.expected as keyof typeof wanted] ?? issue.expected}`,
      where,
      MEND,
    );
  }
  if (issue.code === 'invalid_value') {
    return fail(
      `A field of the pattern file has to be ${issue.values.map((v) => `"${String(v)}"`).join(' or ')}`,
      where,
      MEND,
    );
  }
  const message = issue.code === 'invalid_key' ? issue.issues[0]!.message : issue.message;
  return fail(`A field of the pattern file ${message}`, where, MEND);
}

/** `blocks[0].drawing.points.p3.x` */
const pathText = (path: readonly PropertyKey[]): string =>
  path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '');
