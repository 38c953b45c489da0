import { fail, ok, type Result } from '@seamwright/geometry';
import type { Pattern } from '../pattern.ts';
import type { FileBlock, FilePattern } from '../schema.ts';
import { checkPicture } from './check-picture.ts';
import { picturesOf } from './pictures.ts';
import type { Picture, Tracing } from './tracing.ts';

/**
 * In a file pictures stand apart, each once, and blocks and fabrics name theirs. In the document they have their pictures
 * themselves.
 */

/** The document that a file stands for. Refused: a picture that is not there, is broken, or is named by nothing. */
export function takePictures({ pictures = {}, blocks, fabrics, ...rest }: FilePattern): Result<Pattern> {
  const named = new Set([
    ...blocks.map(({ tracing }) => tracing?.picture),
    ...(fabrics ?? []).map(({ swatch }) => swatch?.picture),
  ]);
  for (const [id, picture] of Object.entries(pictures)) {
    const problem = checkPicture(picture, `pictures.${id}`);
    if (problem !== null) return problem;
    if (!named.has(id)) {
      return fail(
        `No block or fabric has the picture "${id}"`,
        `pictures.${id}`,
        'Take it out, or name it in a block or a fabric',
      );
    }
  }
  const known = new Map(Object.entries(pictures));
  const missing = (id: string, where: string, holder: string) =>
    fail(`There is no picture "${id}"`, where, `Add the picture, or take the ${holder}`);
  for (const [index, { tracing }] of blocks.entries())
    if (tracing !== undefined && !known.has(tracing.picture))
      return missing(tracing.picture, `blocks[${index}].tracing`, 'tracing out of the block');
  for (const [index, { swatch }] of (fabrics ?? []).entries())
    if (swatch !== undefined && !known.has(swatch.picture))
      return missing(swatch.picture, `fabrics[${index}].swatch`, 'swatch off the fabric');
  const whole = <T extends { readonly picture: string }>(holder: T) => ({
    ...holder,
    picture: known.get(holder.picture)!,
  });
  return ok({
    ...rest,
    ...(fabrics !== undefined && {
      fabrics: fabrics.map(({ swatch, ...fabric }) =>
        swatch === undefined ? fabric : { ...fabric, swatch: whole(swatch) },
      ),
    }),
    blocks: blocks.map(({ tracing, ...block }) =>
      tracing === undefined ? block : { ...block, tracing: whole(tracing) },
    ),
  });
}

/** The distinct pictures of a pattern under the names that its file gives them: `picture1`, `picture2` … */
export function filePictures(pattern: Pattern): {
  readonly pictures: Readonly<Record<string, Picture>> | undefined;
  readonly idOf: (picture: Picture) => string;
} {
  const distinct: Picture[] = [];
  for (const picture of picturesOf(pattern))
    if (!distinct.some((one) => same(one, picture))) distinct.push(picture);
  return {
    pictures:
      distinct.length === 0
        ? undefined
        : Object.fromEntries(distinct.map((one, i) => [`picture${i + 1}`, ordered(one)])),
    idOf: (picture) => `picture${distinct.findIndex((one) => same(one, picture)) + 1}`,
  };
}

const same = (a: Picture, b: Picture): boolean =>
  a === b || (a.name === b.name && a.width === b.width && a.height === b.height && a.data === b.data);

const ordered = ({ name, width, height, data }: Picture): Picture => ({ name, width, height, data });

/** A block's tracing as its file has it. */
export const fileTracing = (
  { x, y, width, turn, strength, locked, shown }: Tracing,
  picture: string,
): NonNullable<FileBlock['tracing']> => ({ picture, x, y, width, turn, strength, locked, shown });
