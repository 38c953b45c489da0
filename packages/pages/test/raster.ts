import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A page in dots. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly isDark: (x: number, y: number) => boolean;
}

/** The page as Poppler rasters it, as a printer would. */
export function rasterOf(pdf: Uint8Array, page: number, perInch: number): Raster {
  const folder = mkdtempSync(join(tmpdir(), 'seamwright-raster-'));
  try {
    const file = join(folder, 'file.pdf');
    writeFileSync(file, pdf);
    const range = ['-f', `${page}`, '-l', `${page}`, '-singlefile'];
    execFileSync('pdftoppm', ['-r', `${perInch}`, '-gray', ...range, file, join(folder, 'page')]);
    return readPgm(readFileSync(join(folder, 'page.pgm')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** PGM, binary: the netpbm manual page pgm(5). */
function readPgm(bytes: Uint8Array): Raster {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(String.fromCharCode(...bytes.subarray(0, 64)));
  if (head === null) throw new Error('Poppler wrote no PGM');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const start = head[0].length;
  return { width, height, isDark: (x, y) => bytes[start + y * width + x]! < 128 };
}

interface Run {
  readonly from: number;
  readonly to: number;
}

/** A straight line in the raster: the dots across it, and from end to end. */
interface Line {
  readonly across: Run;
  readonly along: Run;
}

/**
 * The upright squares that are drawn as lines: their left, top, right and lower side in dots, from the middle of a line to the middle of
 * the other. Two upright lines of the same height, and two level lines that close them.
 *
 * @param least dots; shorter lines are not looked at
 */
export function squaresIn(raster: Raster, least: number): readonly { width: number; height: number }[] {
  const upright = lines(raster.width, raster.height, raster.isDark, least);
  const level = lines(raster.height, raster.width, (y, x) => raster.isDark(x, y), least);
  const squares: { width: number; height: number }[] = [];
  for (const left of upright)
    for (const right of upright) {
      const width = middle(right.across) - middle(left.across);
      if (
        width < least ||
        !isNear(left.along.from, right.along.from) ||
        !isNear(left.along.to, right.along.to)
      )
        continue;
      const sides = level.filter(
        ({ along }) => isNear(along.from, left.across.from) && isNear(along.to, right.across.to),
      );
      const top = sides.find(({ across }) => isNear(across.from, left.along.from));
      const bottom = sides.find(({ across }) => isNear(across.to, left.along.to));
      if (top === undefined || bottom === undefined) continue;
      const height = middle(bottom.across) - middle(top.across);
      if (isNear(width, height)) squares.push({ width, height });
    }
  return squares;
}

const middle = ({ from, to }: Run): number => (from + to) / 2;
const isNear = (p: number, q: number): boolean => Math.abs(p - q) <= 1;

/** Lines along the second of two axes: dark runs of neighbouring columns that begin and end together. */
function lines(
  across: number,
  along: number,
  isDark: (x: number, y: number) => boolean,
  least: number,
): readonly Line[] {
  const done: Line[] = [];
  let open: Line[] = [];
  for (let x = 0; x < across; x++) {
    const next: Line[] = [];
    for (const run of runsOf(along, (y) => isDark(x, y), least)) {
      const same = open.find((line) => isNear(line.along.from, run.from) && isNear(line.along.to, run.to));
      if (same) open = open.filter((line) => line !== same);
      next.push({ across: { from: same?.across.from ?? x, to: x }, along: run });
    }
    done.push(...open);
    open = next;
  }
  return [...done, ...open];
}

function runsOf(length: number, isDark: (y: number) => boolean, least: number): readonly Run[] {
  const runs: Run[] = [];
  let from = -1;
  for (let y = 0; y <= length; y++) {
    const dark = y < length && isDark(y);
    if (dark && from < 0) from = y;
    if (!dark && from >= 0) {
      if (y - from >= least) runs.push({ from, to: y - 1 });
      from = -1;
    }
  }
  return runs;
}
