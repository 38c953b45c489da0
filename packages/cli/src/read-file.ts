import { createReadStream } from 'node:fs';
import { basename } from 'node:path';
import { fail, ok, type Result } from '@seamwright/geometry';
import { tooLarge } from '@seamwright/pattern';

/**
 * The text of a file. No more of it is read than may be opened, so a file without end (a device) ends, too.
 */
export async function readText(path: string): Promise<Result<string>> {
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) {
      chunks.push(chunk);
      size += chunk.length;
      const problem = tooLarge(size);
      if (problem !== null) return { ok: false, problem };
    }
  } catch (error) {
    return cannotRead(error as NodeJS.ErrnoException);
  }
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks)));
  } catch {
    return fail('The file is not a text in UTF-8', '', 'Choose a pattern file or an SVG drawing');
  }
}

function cannotRead(error: NodeJS.ErrnoException) {
  switch (error.code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return fail('There is no such file', '', 'Check its name');
    case 'EISDIR':
      return fail('This is a folder', '', 'Name a file in it');
    case 'EACCES':
    case 'EPERM':
      return fail('The file may not be read', '', 'Give yourself the right to read it');
    default:
      return fail(
        `The file cannot be read (${error.code ?? error.message})`,
        '',
        'Copy it to another place and try again',
      );
  }
}

/** A file's name without its folder and without the endings of our files and of drawings. */
export const nameOf = (path: string): string => basename(path).replace(/(\.seamwright)?\.(json|svg)$/i, '');
