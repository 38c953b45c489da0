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

// Whoever reads the output may stop early, as "head" does.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const io: Io = {
  out: (text) => process.stdout.write(text),
  complain: (line) => process.stderr.write(`${line}\n`),
  fonts,
  solver,
};

try {
  process.exitCode = await run(process.argv.slice(2), io);
} catch (error) {
  // Left alone, Node would end with 1, which means "not sewable" here.
  process.exitCode = 2;
  io.complain(`This is a mistake of Seamwright’s, not of yours: ${oneLine(String(error))}. Please report it`);
}
