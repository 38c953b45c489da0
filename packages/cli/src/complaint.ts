import { fail, type Problem, sentence } from '@seamwright/geometry';
import type { Io, Status } from './io.ts';

/** Says on one line of standard error what is wrong: the file first, when it is about one. */
export function complain(io: Io, problem: Problem, file?: string): Status {
  const line = file === undefined ? sentence(problem) : `${file}: ${sentence(problem)}`;
  io.complain(oneLine(line));
  return 2;
}

/** The call itself is wrong. */
export const badCall = (command: string, what: string, remedy?: string) =>
  fail(what, '', remedy ?? `See "seamwright ${command} --help"`);

/** Names of files and blocks may hold line breaks and control characters: they must not make a second line, or move the cursor. */
export const oneLine = (text: string): string => text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').trim();
