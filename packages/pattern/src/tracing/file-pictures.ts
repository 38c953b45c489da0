import { fail, ok, type Result } from '@seamwright/geometry';
import type { Block, Pattern } from '../pattern.ts';
import type { FileBlock, FilePattern } from '../schema.ts';
import { checkPicture } from './check-picture.ts';
import type { Picture, Tracing } from './tracing.ts';

/**
 * In a file pictures stand apart, each once, and blocks name theirs. In the document a block has its picture itself.
 */

/** The document that a file stands for. Refused: a picture that is not there, is broken, or is named by no block. */
export function takePictures({ pictures = {}, blocks, ...rest }: FilePattern): Result<Pattern> {
  for (const [id, picture] of Object.entries(pictures)) {
    const problem = checkPicture(picture, `pictures.${id}`);
    if (problem !== null) return problem;
    if (!blocks.some(({ tracing }) => tracing?.picture === id)) {
      return fail(`No block has the picture "${id}"`, `pictures.${id}`, 'Take it out, or name it in a block');
    }
  }
  const known = new Map(Object.entries(pictures));
  const taken: Block[] = [];
  for (const [index, { tracing, ...block }] of blocks.entries()) {
    if (tracing === undefined) {
      taken.push(block);
      continue;
    }
    const picture = known.get(tracing.picture);
    if (picture === undefined) {
      return fail(
        `There is no picture "${tracing.picture}"`,
        `blocks[${index}].tracing`,
        'Add the picture, or take the tracing out of the block',
      );
    }
    taken.push({ ...block, tracing: { ...tracing, picture } });
  }
  return ok({ ...rest, blocks: taken });
}

/** The distinct pictures of a pattern under the names that its file gives them: `picture1`, `picture2` … */
export function filePictures(blocks: readonly Block[]): {
  readonly pictures: Readonly<Record<string, Picture>> | undefined;
  readonly idOf: (picture: Picture) => string;
} {
  const distinct: Picture[] = [];
  for (const { tracing } of blocks)
    if (tracing !== undefined && !distinct.some((one) => same(one, tracing.picture)))
      distinct.push(tracing.picture);
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
