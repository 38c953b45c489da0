import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Reads a PDF with Poppler and gives back what is drawn on its pages, in points, so that a saved file can be
 * measured by something that shares no code with what wrote it.
 *
 * `pdftocairo -svg` must be called with -nocenter and -noshrink: without them it shifts the page, and scales A4 by
 * 0.9988. Its own rounding is under 0.0015 mm.
 */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle through which a path is seen: left, top, right, bottom. */
export type Window = readonly [number, number, number, number];

/** A path of straight stretches as it stands on the page: points from the top left corner, y down. */
export interface DrawnPath {
  readonly points: readonly Spot[];
  readonly closed: boolean;
  readonly stroked: boolean;
  readonly dashed: boolean;
  /** Width of the stroke, points. */
  readonly width: number;
  /** Only what lies in it is seen: foundations cut into tiles. */
  readonly window: Window | null;
}

export interface DrawnPage {
  /** The MediaBox: left, bottom, right, top, points, as `pdfinfo -box` prints it (two decimals). */
  readonly mediaBox: readonly [number, number, number, number];
  /** What Poppler makes of the page's size, points, unrounded. */
  readonly width: number;
  readonly height: number;
  readonly paths: readonly DrawnPath[];
  /** The words on the page, in the order in which Poppler finds them. */
  readonly text: string;
}

/** Whether Poppler's tools are on this machine. */
export const hasPoppler: boolean = ['pdftocairo', 'pdfinfo', 'pdftotext'].every(runs);

function runs(tool: string): boolean {
  try {
    execFileSync(tool, ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Every page of the file. Throws when Poppler cannot read it. */
export function readPdf(bytes: Uint8Array): readonly DrawnPage[] {
  const folder = mkdtempSync(join(tmpdir(), 'seamwright-pdf-'));
  try {
    const file = join(folder, 'file.pdf');
    writeFileSync(file, bytes);
    const info = poppler('pdfinfo', ['-box', '-f', '1', '-l', '99999', file]);
    const boxes = [...info.matchAll(/^Page +\d+ MediaBox: +(.+)$/gm)].map(
      ([, numbers]) => numbers!.trim().split(/ +/).map(Number) as unknown as DrawnPage['mediaBox'],
    );
    return boxes.map((mediaBox, i): DrawnPage => {
      const page = `${i + 1}`;
      const picture = join(folder, `${page}.svg`);
      const range = ['-f', page, '-l', page];
      poppler('pdftocairo', ['-svg', '-nocenter', '-noshrink', ...range, file, picture]);
      const text = poppler('pdftotext', ['-raw', ...range, file, '-']);
      return { mediaBox, text, ...readPicture(readFileSync(picture, 'utf8')) };
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const poppler = (tool: string, args: readonly string[]): string =>
  execFileSync(tool, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

function readPicture(svg: string): Pick<DrawnPage, 'width' | 'height' | 'paths'> {
  const box = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  if (box === null) throw new Error('Poppler wrote a picture without a viewBox');
  const windows = new Map<string, Window>();
  for (const [, id, d] of svg.matchAll(/<clipPath id="([^"]*)">\s*<path[^>]* d="([^"]*)"/g)) {
    const corners = subpaths(d!).flatMap(({ points }) => points);
    const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
    windows.set(id!, [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]);
  }
  // Shapes of letters are defined before they are used; only what is used is drawn.
  const drawn = svg.replace(/<defs>[\s\S]*?<\/defs>/g, '');
  const open: (Window | null)[] = [null];
  const paths: DrawnPath[] = [];
  for (const [tag, group, path] of drawn.matchAll(/<g\b([^>]*)>|<\/g>|<path ([^>]*)\/>/g)) {
    if (tag === '</g>') open.pop();
    else if (path !== undefined) paths.push(...readPath(path, open.at(-1)!));
    else {
      const clip = /clip-path="url\(#([^)]*)\)"/.exec(group!)?.[1];
      open.push(clip === undefined ? open.at(-1)! : (windows.get(clip) ?? null));
    }
  }
  return { width: Number(box[1]), height: Number(box[2]), paths };
}

function readPath(attributes: string, window: Window | null): readonly DrawnPath[] {
  // Some versions of Poppler write style="stroke-width:1;…", others stroke-width="1".
  const style = /(?:^| )style="([^"]*)"/.exec(attributes)?.[1] ?? '';
  const value = (name: string) =>
    new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes)?.[1] ??
    new RegExp(`(?:^|;) *${name} *: *([^;]*)`).exec(style)?.[1];
  // A path with a round dash or letter in it may have straight ones beside.
  const straight = (value('d') ?? '').split(/(?=M)/).filter((part) => !/[CSQTA]/i.test(part));
  const [a, b, c, e, f, g] = matrix(value('transform'));
  const stroke = value('stroke');
  return straight.flatMap(subpaths).map(({ points, closed }) => ({
    points: points.map(({ x, y }) => ({ x: a * x + c * y + f, y: b * x + e * y + g })),
    closed,
    stroked: stroke !== undefined && stroke !== 'none',
    dashed: value('stroke-dasharray') !== undefined,
    width: Number(value('stroke-width') ?? 0) * Math.sqrt(Math.abs(a * e - b * c)),
    window,
  }));
}

/** a, b, c, d, e, f of an SVG matrix. */
function matrix(transform: string | undefined): readonly [number, number, number, number, number, number] {
  const numbers = /^matrix\(([^)]*)\)$/.exec(transform ?? 'matrix(1, 0, 0, 1, 0, 0)')?.[1];
  if (numbers === undefined) throw new Error(`Not a transform that Poppler writes: ${transform}`);
  return numbers.split(/[ ,]+/).map(Number) as [number, number, number, number, number, number];
}

function subpaths(d: string): readonly { points: readonly Spot[]; closed: boolean }[] {
  const found: { points: Spot[]; closed: boolean }[] = [];
  for (const [, command, rest] of d.matchAll(/([MLHVZ])([^MLHVZ]*)/gi)) {
    const numbers = (rest!.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number);
    const current = found.at(-1);
    if (command === 'M') found.push({ points: [{ x: numbers[0]!, y: numbers[1]! }], closed: false });
    else if (command === 'L') current!.points.push({ x: numbers[0]!, y: numbers[1]! });
    else if (command === 'Z') current!.closed = true;
    else throw new Error(`Poppler wrote the path command ${command}, which is not expected here`);
  }
  // After closing a path Poppler moves to its start once more.
  return found.filter(({ points }) => points.length > 1).map(withoutRepeat);
}

function withoutRepeat(path: { points: Spot[]; closed: boolean }): { points: Spot[]; closed: boolean } {
  const [first, last] = [path.points[0]!, path.points.at(-1)!];
  const repeated = path.closed && first.x === last.x && first.y === last.y;
  return repeated ? { ...path, points: path.points.slice(0, -1) } : path;
}

/** Longest minus shortest of the sides, and the mean of them, when the path is a closed rectangle; else null. */
function squareSide(path: DrawnPath): number | null {
  if (!path.closed || path.points.length !== 4) return null;
  const sides = path.points.map((p, i) => {
    const q = path.points[(i + 1) % 4]!;
    return Math.hypot(q.x - p.x, q.y - p.y);
  });
  const diagonals = [0, 1].map((i) => {
    const [p, q] = [path.points[i]!, path.points[i + 2]!];
    return Math.hypot(q.x - p.x, q.y - p.y);
  });
  const mean = sides.reduce((sum, side) => sum + side, 0) / 4;
  const even = sides.every((side) => Math.abs(side - mean) < 0.01);
  return even && Math.abs(diagonals[0]! - diagonals[1]!) < 0.01 ? mean : null;
}

/** The sides of the check squares on the page, shortest first: closed squares drawn with the finest line. */
export function checkSquareSides(page: DrawnPage): readonly number[] {
  const squares = page.paths.filter(({ stroked, dashed, width }) => stroked && !dashed && width < 0.6);
  return squares
    .map(squareSide)
    .filter((side) => side !== null)
    .filter((side) => side > 36)
    .sort((p, q) => p - q);
}

/** Closed dashed paths: the cutting lines. A foundation in tiles has its whole one on each tile that shows some of it. */
export const cuttingLines = (page: DrawnPage): readonly DrawnPath[] =>
  page.paths.filter(({ stroked, closed, dashed }) => stroked && closed && dashed);

/** Closed solid paths drawn with a heavy line: the finished outlines, in tiles as with {@link cuttingLines}. */
export const finishedOutlines = (page: DrawnPage): readonly DrawnPath[] =>
  page.paths.filter(({ stroked, closed, dashed, width }) => stroked && closed && !dashed && width > 1);

/** Straight solid paths of two points: sew lines, their runs through the allowance, match marks, rules. */
export const straightLines = (page: DrawnPage): readonly DrawnPath[] =>
  page.paths.filter(
    ({ stroked, closed, dashed, points }) => stroked && !closed && !dashed && points.length === 2,
  );

/**
 * How far the corners of `drawn` are from those of `wanted` (both in points) when it is moved, and turned by
 * quarters, to lie on it as well as it can: the greatest distance, points. Not mirrored: a mirror image does
 * not fit. Infinity when the number of corners differs.
 */
export function misfit(drawn: readonly Spot[], wanted: readonly Spot[]): number {
  if (drawn.length !== wanted.length) return Infinity;
  let least = Infinity;
  for (const ring of [drawn, [...drawn].reverse()])
    for (let quarter = 0; quarter < 4; quarter++)
      for (let first = 0; first < ring.length; first++) {
        const turned = ring.map((_, i) => {
          const { x, y } = ring[(i + first) % ring.length]!;
          return [
            { x, y },
            { x: y, y: -x },
            { x: -x, y: -y },
            { x: -y, y: x },
          ][quarter]!;
        });
        const dx = mean(turned.map((p, i) => wanted[i]!.x - p.x));
        const dy = mean(turned.map((p, i) => wanted[i]!.y - p.y));
        const worst = Math.max(
          ...turned.map((p, i) => Math.hypot(p.x + dx - wanted[i]!.x, p.y + dy - wanted[i]!.y)),
        );
        least = Math.min(least, worst);
      }
  return least;
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, n) => sum + n, 0) / numbers.length;
