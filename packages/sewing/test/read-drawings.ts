import { readdirSync, readFileSync } from 'node:fs';
import { type Drawing, drawingFromSegments } from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';

const folder = new URL('./fixtures/drawings/', import.meta.url);

export interface Expected {
  readonly patches: number;
  readonly oneFoundation: boolean;
  readonly straightSeams: boolean;
  readonly fewestFoundations: number | null;
}

/** One of the drawings with a known answer, as bare coordinates. */
export interface KnownDrawing {
  readonly name: string;
  readonly outline: readonly Point[];
  readonly segments: readonly Segment[];
  readonly expected: Expected;
}

/** Every drawing of the folder; one without an answer, or an answer without a drawing, is an error. */
export function knownDrawings(): KnownDrawing[] {
  const expected = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Record<
    string,
    Expected
  >;
  const names = readdirSync(folder).flatMap((file) => (file.endsWith('.svg') ? [file.slice(0, -4)] : []));
  const unmatched = [...names, ...Object.keys(expected)].filter(
    (n) => !(n in expected) || !names.includes(n),
  );
  if (unmatched.length > 0) throw new Error(`drawings and answers do not match: ${unmatched.join(', ')}`);
  return names.map((name) => {
    const svg = readFileSync(new URL(`${name}.svg`, folder), 'utf8');
    const numbers = (text: string) =>
      text
        .trim()
        .split(/[\s,]+/)
        .map(Number);
    const flat = numbers(/<polygon points="([^"]+)"/.exec(svg)![1]!);
    const outline = flat.flatMap((x, i) => (i % 2 === 0 ? [{ x, y: flat[i + 1]! }] : []));
    const segments = [...svg.matchAll(/<line x1="(.+?)" y1="(.+?)" x2="(.+?)" y2="(.+?)"/g)].map((m) => ({
      a: { x: Number(m[1]), y: Number(m[2]) },
      b: { x: Number(m[3]), y: Number(m[4]) },
    }));
    return { name, outline, segments, expected: expected[name]! };
  });
}

export const drawingOf = ({ outline, segments }: Pick<KnownDrawing, 'outline' | 'segments'>): Drawing =>
  drawingFromSegments(outline, segments);
