#!/usr/bin/env node
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { LoadSolver } from '@seamwright/cloth';
import type { PageFonts } from '@seamwright/pages';
import { oneLine } from './complaint.ts';
import type { Io } from './io.ts';
import { run } from './run.ts';

/** The build puts the fonts beside the program. */
const font = (name: string): Promise<Uint8Array> => readFile(new URL(`./fonts/${name}.ttf`, import.meta.url));

const fonts = async (): Promise<PageFonts> => ({
  regular: await font('regular'),
  semibold: await font('semibold'),
});

/** The build puts its WebAssembly beside the program, too. */
let loaded: ReturnType<LoadSolver> | undefined;
const solver: LoadSolver = () => {
  loaded ??= import('highs').then(({ default: load }) =>
    load({ locateFile: () => fileURLToPath(new URL('./highs.wasm', import.meta.url)) }),
  );
  return loaded;
};

const io: Io = {
  out: (text) => process.stdout.write(text),
  complain: (line) => process.stderr.write(`${line}\n`),
  fonts,
  solver,
};

let unwritten = false;
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // Whoever reads the output may stop early, as "head" does. Anything else, a full disk, loses the answer.
  if (error.code === 'EPIPE' || unwritten) return;
  unwritten = true;
  process.exitCode = 2;
  io.complain(
    `The answer cannot be written to standard output (${error.code}). Make room there, or send it elsewhere.`,
  );
});
// Where complaints cannot be written, the exit status still tells.
process.stderr.on('error', () => {});

try {
  const status = await run(process.argv.slice(2), io);
  process.exitCode = unwritten ? 2 : status;
} catch (error) {
  // Left alone, Node would end with 1, which means "not sewable" here.
  process.exitCode = 2;
  io.complain(`This is a mistake of Seamwright’s, not of yours: ${oneLine(String(error))}. Please report it`);
}
