import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { FONT_FILES } from '@seamwright/pages';
import loadHighs from 'highs';
import { afterAll } from 'vitest';
import { run } from '../src/run.ts';

const fromPages = createRequire(new URL('../../pages/package.json', import.meta.url));
const font = async (weight: 'regular' | 'semibold') => readFileSync(fromPages.resolve(FONT_FILES[weight]));

let solver: ReturnType<typeof loadHighs> | undefined;

export interface Ran {
  readonly status: number;
  readonly out: string;
  /** The lines of standard error. */
  readonly complaints: readonly string[];
}

/** Runs a command in this process. */
export async function ran(...argv: string[]): Promise<Ran> {
  let out = '';
  const complaints: string[] = [];
  const status = await run(argv, {
    out: (text) => {
      out += text;
    },
    complain: (line) => complaints.push(line),
    fonts: async () => ({ regular: await font('regular'), semibold: await font('semibold') }),
    solver: () => {
      solver ??= loadHighs();
      return solver;
    },
  });
  return { status, out, complaints };
}

/** A folder of the test's own, gone afterwards. */
export class Folder {
  readonly path = mkdtempSync(join(tmpdir(), 'seamwright-cli-'));

  constructor() {
    afterAll(() => rmSync(this.path, { recursive: true, force: true }));
  }

  /** The path of a file in it; written when `content` is given. */
  file(name: string, content?: string | Uint8Array): string {
    const path = join(this.path, name);
    if (content !== undefined) writeFileSync(path, content);
    return path;
  }

  read(name: string): string {
    return readFileSync(join(this.path, name), 'utf8');
  }

  /** Every file in it, with its size: what must not change when a command refuses. */
  listing(): string[] {
    return readdirSync(this.path, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => `${relative(this.path, path)} ${statSync(path).size}`)
      .sort();
  }
}

const svg = (content: string, size = 6) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${size}in" height="${size}in" viewBox="0 0 ${size} ${size}"><rect width="${size}" height="${size}"/>${content}</svg>\n`;

/** A square of 6 in, one line across: sky over sea. */
export const HORIZON = svg('<line x1="0" y1="4" x2="6" y2="4"/>');

/** A square of 6 in, four panes: two foundations. */
export const PANES = svg('<path d="M3 0V6M0 3H6"/>');

/**
 * A square of 3 in cut into five: four oblongs that chase each other round a square, a ring of four seams, each of which
 * ends on the next. Never with straight seams; with one partial seam.
 */
export const CHASE = svg('<path d="M1 0V2M0 2H2M2 1V3M1 1H3"/>', 3);

/** A square of 3 in with an attic window: three seams meet at a corner, and one would have to be set in. */
export const ATTIC = svg('<path d="M1 0V2M1 2H3M0 3L1 2"/>', 3);
