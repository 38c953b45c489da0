import {
  buyText,
  type Caution,
  type ChartRow,
  type ClothPlan,
  counted,
  noteText,
  stripTexts,
  takesText,
} from '@seamwright/cloth';
import { formatLength, type LengthUnit } from '@seamwright/geometry';
import { polygonMark, QUIET, STROKES, type TextLook, textMark } from '../marks/marks.ts';
import { shortened, wrapped } from '../marks/metrics.ts';
import type { Mark, Weight } from '../marks/model.ts';
import type { Part } from '../sheet/check-part.ts';
import type { FlowPart } from '../sheet/flow.ts';
import { tickBox } from './chart-rows.ts';

const NAME = { size: 13, weight: 'semibold' } as const;
const WORDS = { size: 9, weight: 'regular' } as const;
const STRONG = { size: 9, weight: 'semibold' } as const;
const SMALL = { size: 7.5, weight: 'regular' } as const;

/** Points: from the fabric's name to a place for a scrap of it, and how large that is. */
const SCRAP = { width: 72, height: 40 } as const;

/** Points. On less there is no place for a scrap beside the words. */
const ROOM_FOR_SCRAP = 360;

const INDENT = 16;

/** Lines of one height of strips that stay on one sheet. */
const MOST_TOGETHER = 8;

/** Lines of words, one part for each. */
export function wordParts(
  content: string,
  look: { readonly size: number; readonly weight: Weight; readonly ink?: number },
  { width, left = 0, gap = 0 }: { readonly width: number; readonly left?: number; readonly gap?: number },
): readonly FlowPart[] {
  const step = look.size * 1.25;
  const lines = wrapped(content, look.size, look.weight, width - left, Number.POSITIVE_INFINITY);
  return lines.map((line, i) => ({
    marks: [textMark('footer', undefined, line, { x: left, y: look.size * 0.95 }, look)],
    height: step,
    ...(i === lines.length - 1 ? { gap } : { keep: true }),
  }));
}

/**
 * A fabric's name, what is to be known of it, what is bought, and a place for a scrap. Stays with what follows.
 *
 * @param rows those of the fabric
 */
export function clothParts(
  name: string,
  plan: ClothPlan,
  rows: readonly ChartRow[],
  unit: LengthUnit,
  width: number,
): readonly FlowPart[] {
  const { cloth } = plan;
  const column = width < ROOM_FOR_SCRAP ? width : width - SCRAP.width - 16;
  const facts = [
    `usable width ${formatLength(cloth.usableWidth, unit)}`,
    ...(cloth.directional
      ? [
          'the arrow is the print’s up',
          ...(rows.some(({ shape }) => shape === 'half-rectangle')
            ? ['of a half-rectangle only the shaded half serves']
            : []),
        ]
      : cloth.straight
        ? ['the arrow is the grain, along the fabric’s length']
        : []),
  ].join(' · ');
  const marks: Mark[] = [];
  let y = 0;
  const set = (texts: readonly string[], look: TextLook, step: number) => {
    for (const text of texts) {
      y += step;
      marks.push(textMark('footer', undefined, text, { x: 0, y: y - 2.5 }, look));
    }
  };
  set(wrapped(name, NAME.size, NAME.weight, column, 2), NAME, 15.5);
  set(lines(facts, SMALL, column), { ...SMALL, ink: QUIET }, 10.5);
  set(lines(buyText(plan, unit), WORDS, column), WORDS, 12);
  if (column < width) marks.push(...scrapPlace(width));
  const height = column < width ? Math.max(y, SCRAP.height) : y;
  return [{ marks, height, gap: 8, keep: true }];
}

function scrapPlace(width: number): readonly Mark[] {
  const left = width - SCRAP.width;
  const box = [
    { x: left, y: 0 },
    { x: width, y: 0 },
    { x: width, y: SCRAP.height },
    { x: left, y: SCRAP.height },
  ];
  const at = { x: left + SCRAP.width / 2, y: SCRAP.height - 4 };
  return [
    polygonMark('footer', undefined, box, STROKES.rule),
    textMark('footer', undefined, 'a scrap of it', at, { size: 7, anchor: 'middle', ink: QUIET }),
  ];
}

/** The fabric's name where its rows go on. */
export const clothAgain = (name: string, width: number): Part => ({
  marks: [
    textMark(
      'footer',
      undefined,
      shortened(`${name}, continued`, 10, 'semibold', width),
      { x: 0, y: 9.5 },
      { size: 10, weight: 'semibold' },
    ),
  ],
  height: 13,
  gap: 4,
});

/** The strips, what they take, and what there is to know. */
export function stripParts(
  plan: ClothPlan,
  layers: number,
  unit: LengthUnit,
  width: number,
  again: readonly Part[],
): readonly FlowPart[] {
  const steps = stripTexts(plan, layers, unit);
  const head =
    steps.length === 0
      ? []
      : [
          ...wordParts(`Strips across the fabric, cut in ${counted(layers, 'layer')} at a time`, STRONG, {
            width,
          }),
          ...wordParts(takesText(plan, unit), WORDS, { width, gap: 3 }),
        ];
  const strips = steps.flatMap(({ strips: what, cuts }) => {
    const marks = [tickBox(9), textMark('footer', undefined, what, { x: INDENT, y: 9 }, STRONG)];
    const lines = cuts.flatMap((cut) => wordParts(cut, WORDS, { width, left: 2 * INDENT }));
    return [{ marks, height: 12 }, ...lines].map((part, i, all) => {
      const isLast = i === all.length - 1;
      return {
        ...part,
        keep: !isLast && (i === 0 || all.length <= MOST_TOGETHER),
        gap: isLast ? 3 : 0,
      };
    });
  });
  const notes = plan.notes.flatMap((note) =>
    wordParts(`To know: ${noteText(note, plan.cloth, unit)}.`, STRONG, { width, gap: 2 }),
  );
  return [...head.map((part) => ({ ...part, keep: true })), ...strips, ...notes].map((part) => ({
    ...part,
    again,
  }));
}

/** What to mind, each with where it comes from, small; all on one sheet. */
export function cautionParts(cautions: readonly Caution[], width: number): readonly FlowPart[] {
  return together([
    ...wordParts('With the cutter in your hand', { size: 11, weight: 'semibold' }, { width, gap: 4 }),
    ...cautions.flatMap(({ text, source }) => [
      ...wordParts(text, WORDS, { width }),
      ...wordParts(source, { size: 6.5, weight: 'regular', ink: QUIET }, { width, gap: 4 }),
    ]),
  ]);
}

const together = (parts: readonly FlowPart[]): readonly FlowPart[] =>
  parts.map((part, i) => (i === parts.length - 1 ? part : { ...part, keep: true }));

const lines = (content: string, { size, weight }: typeof WORDS | typeof SMALL, width: number) =>
  wrapped(content, size, weight, width, Number.POSITIVE_INFINITY);
