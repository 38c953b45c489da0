import { randomUUID } from 'node:crypto';
import { rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { fail, type Problem } from '@seamwright/geometry';

export interface NewFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** A file that could not be written, and why. */
export interface WriteProblem {
  readonly path: string;
  readonly problem: Problem;
}

/**
 * Writes files whole or not at all: each goes to a new file beside its place, and only when all are there do they take
 * their places. What was there before stays until then, and stays for good when anything fails.
 *
 * @returns null when all were written
 */
export async function writeWhole(files: readonly NewFile[]): Promise<WriteProblem | null> {
  const waiting: { from: string; to: string }[] = [];
  try {
    for (const { path, content } of files) {
      const problem = await unfitPlace(path);
      if (problem !== null) return { path, problem };
      const from = join(dirname(path), `.${basename(path)}.${randomUUID()}.part`);
      waiting.push({ from, to: path });
      try {
        await writeFile(from, content, { flag: 'wx' });
      } catch (error) {
        return { path, problem: cannotWrite(error as NodeJS.ErrnoException) };
      }
    }
    for (let next = waiting[0]; next !== undefined; next = waiting[0]) {
      try {
        await rename(next.from, next.to);
      } catch (error) {
        return { path: next.to, problem: cannotWrite(error as NodeJS.ErrnoException) };
      }
      waiting.shift();
    }
    return null;
  } finally {
    for (const { from } of waiting) await rm(from, { force: true });
  }
}

async function unfitPlace(path: string): Promise<Problem | null> {
  const place = await stat(path).catch(() => null);
  if (place?.isDirectory())
    return problemOf('There is a folder of that name', 'Choose another name for the file');
  if (place !== null && !place.isFile())
    return problemOf('This is no plain file', 'Choose another name for the file');
  const folder = await stat(dirname(path)).catch(() => null);
  return folder?.isDirectory()
    ? null
    : problemOf('There is no folder to put the file in', 'Make the folder, or choose another');
}

function cannotWrite(error: NodeJS.ErrnoException): Problem {
  switch (error.code) {
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return problemOf('Nothing may be written there', 'Choose another folder');
    case 'ENOSPC':
    case 'EDQUOT':
      return problemOf('There is no room left there', 'Make room, or choose another disk');
    case 'ENAMETOOLONG':
      return problemOf('The name is too long', 'Choose a shorter name');
    default:
      return problemOf(`The file cannot be written (${error.code ?? error.message})`, 'Choose another place');
  }
}

const problemOf = (what: string, remedy: string): Problem => fail(what, '', remedy).problem;

/** Whether two names lead to one file as far as names tell: enough to keep a result from replacing what it was made of. */
export const isSameFile = (a: string, b: string): boolean => resolve(a) === resolve(b);
