import { formatLength, type LengthUnit } from '@seamwright/geometry';
import { polygonMark, QUIET, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import { wrapped } from '../marks/metrics.ts';
import type { Mark, Stroke } from '../marks/model.ts';
import type { Part } from './check-part.ts';
import { photocopyTable } from './photocopy.ts';

/** The lines of a foundation by their names, the finest and palest last. */
const LINES: readonly (readonly [name: string, stroke: Stroke])[] = [
  ['match mark', STROKES.matchMark],
  ['finished outline: sew', STROKES.finishedOutline],
  ['sew line', STROKES.sewLine],
  ['cutting line: cut', STROKES.cuttingLine],
  ['sew line in the allowance', STROKES.runOn],
  ['rule', STROKES.rule],
];

/** From black to the palest that the pages use. */
const GREYS: readonly number[] = [1, 0.75, 0.6, 0.4, 0.3];

/** What a copier is set to most often: half, a letter page on half of one, larger by half, twice. */
const PERCENTAGES: readonly number[] = [50, 75, 90, 110, 125, 150, 200];

const TITLE = { size: 10, weight: 'semibold' } as const;
const WORDS = { size: 8.5, weight: 'regular' } as const;
const STEP = 13;

/** Lines and greys as foundations have them: all must show, and show unbroken. */
export function sampleBlock(width: number): Part {
  const length = Math.min(90, width * 0.4);
  const marks: Mark[] = [...lines('Lines and greys', TITLE, 9)];
  let y = 9 + STEP;
  for (const [name, stroke] of LINES) {
    marks.push(
      segmentMark('footer', undefined, { a: { x: 0, y: y - 3 }, b: { x: length, y: y - 3 } }, stroke),
      textMark('footer', undefined, name, { x: length + 8, y }, WORDS),
    );
    y += STEP;
  }
  const side = length / GREYS.length;
  GREYS.forEach((ink, i) => {
    const [left, right] = [i * side, (i + 1) * side];
    const box = [
      { x: left, y: y - 9 },
      { x: right, y: y - 9 },
      { x: right, y: y + 5 },
      { x: left, y: y + 5 },
    ];
    marks.push({ ...polygonMark('footer', undefined, box, STROKES.rule), fill: ink });
  });
  marks.push(textMark('footer', undefined, 'greys', { x: length + 8, y }, WORDS));
  y += STEP + 8;
  for (const line of wrapped(
    'Each line must show unbroken, each grey on its own. If not: print darker, or not in draft quality.',
    WORDS.size,
    WORDS.weight,
    width,
    4,
  )) {
    marks.push(textMark('footer', undefined, line, { x: 0, y }, { ...WORDS, ink: QUIET }));
    y += 11;
  }
  return { marks, height: y - 8 };
}

/** What a photocopier's percentages do to the allowance. */
export function photocopyBlock(width: number, unit: LengthUnit): Part {
  const { allowance, rows, why } = photocopyTable(PERCENTAGES);
  const title = `What a photocopier does to ${formatLength(allowance, unit)} of seam allowance`;
  const marks: Mark[] = [];
  let y = 9;
  for (const line of wrapped(title, TITLE.size, TITLE.weight, width, 3)) {
    marks.push(...lines(line, TITLE, y));
    y += STEP;
  }
  for (const { percentage, becomes, off } of rows) {
    const much = formatLength(Math.abs(off), unit);
    marks.push(
      textMark('footer', undefined, `${percentage} %`, { x: 34, y }, { ...WORDS, anchor: 'end' }),
      textMark('footer', undefined, formatLength(becomes, unit), { x: 46, y }, WORDS),
      textMark(
        'footer',
        undefined,
        `${much} too ${off > 0 ? 'wide' : 'narrow'}`,
        { x: 100, y },
        { ...WORDS, ink: QUIET },
      ),
    );
    y += STEP;
  }
  y += 3;
  for (const line of wrapped(why, WORDS.size, WORDS.weight, width, 8)) {
    marks.push(textMark('footer', undefined, line, { x: 0, y }, { ...WORDS, ink: QUIET }));
    y += 11;
  }
  return { marks, height: y - 8 };
}

const lines = (content: string, look: typeof TITLE, y: number): readonly Mark[] => [
  textMark('footer', undefined, content, { x: 0, y }, look),
];
