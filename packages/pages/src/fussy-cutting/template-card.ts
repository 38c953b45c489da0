import {
  allowanceOutline,
  boundingBox,
  compose,
  edgesOf,
  formatLength,
  POINTS_PER_INCH,
  type Point,
  type Polygon,
  rotation,
  scaling,
  transformPoint,
  transformPolygon,
  translation,
} from '@seamwright/geometry';
import { polygonMark, QUIET, STROKES, textMark } from '../marks/marks.ts';
import { shortened, textWidth } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import { grownArea } from '../packing/least-sheets.ts';
import { type Packable, type Way, wayOver } from '../packing/placement.ts';
import type { CheckedTemplates } from './template-job.ts';
import { frameMarks, insideMarks } from './template-marks.ts';

/** A template lying in one way, its marks from the corner of its box. */
interface TemplateWay extends Way {
  readonly marks: readonly Mark[];
}

export interface TemplateCard extends Packable<TemplateWay> {
  readonly name: string;
}

const NAME = { size: 9, weight: 'semibold' } as const;
const FACT = { size: 7.5, weight: 'regular' } as const;

/** Points that a heading has at least, however small the template: the name of most fabrics. */
const HEADING = 144;

/** Points for two lines of words. */
export const CAPTION = 24;

/**
 * A patch's template, as it may lie on a sheet: upright or turned by a quarter, never mirrored.
 *
 * @param gap points between neighbours
 */
export function templateCard(job: CheckedTemplates, index: number, name: string, gap: number): TemplateCard {
  const ways = ([0, 90] as const).map((turn) => wayOf(job, index, name, turn));
  const outline = job.arrangement.patches[index]!.polygon;
  const grown = transformPolygon<'block', 'page'>(
    scaling<'block', 'page'>(job.scale * POINTS_PER_INCH),
    allowanceOutline(outline, job.allowance / job.scale).outline,
  );
  return { name, ways, grown: grownArea(grown, gap / 2) };
}

/** A template without its caption, turned; the corner of its box at (0, 0). Points. */
export interface DrawnTemplate {
  readonly marks: readonly Mark[];
  readonly cuttingLine: Polygon<'page'>;
  readonly width: number;
  readonly height: number;
}

export function drawnTemplate(
  { arrangement, allowance, scale, kind }: CheckedTemplates,
  index: number,
  name: string,
  turn: 0 | 90,
): DrawnTemplate {
  const patch = arrangement.patches[index]!;
  const sewn = transformPolygon(scaling(scale), patch.polygon);
  const cutting = allowanceOutline(sewn, allowance).outline;
  const toPoints = compose(scaling<'block', 'page'>(POINTS_PER_INCH), rotation<'page'>(turn, { x: 0, y: 0 }));
  const box = boundingBox(transformPolygon(toPoints, cutting));
  const place = compose(toPoints, translation<'page', 'page'>(-box.minX, -box.minY));
  const outline: Polygon<'page'> = transformPolygon(place, sewn);
  const cuttingLine: Polygon<'page'> = transformPolygon(place, cutting);
  const heart: Point<'page'> = transformPoint(compose(scaling(scale), place), patch.heart);
  const shape = { name, outline, cuttingLine, heart, depth: patch.depth * scale * POINTS_PER_INCH, up: turn };

  const marks: Mark[] = [
    ...(allowance > 0 ? [polygonMark('cutting-line', name, cuttingLine, STROKES.cuttingLine)] : []),
    polygonMark('finished-outline', name, outline, STROKES.finishedOutline),
    ...(kind === 'template' ? insideMarks(shape) : frameMarks(shape)),
  ];
  return { marks, cuttingLine, width: box.maxX - box.minX, height: box.maxY - box.minY };
}

/** What it is, in words. */
export const factsOf = ({ kind, allowance, unit }: CheckedTemplates): string =>
  `${kind}, ${formatLength(allowance, unit)} seam allowance`;

/** `cut 12 from Brick`; of mirrored blocks, `cut 12, and 2 turned over, from Brick`. Null where neither is known. */
export function cutText(
  { copies = 0, mirrored = 0, fabrics }: CheckedTemplates,
  index: number,
): string | null {
  const from = fabrics[index] ? ` from ${fabrics[index]}` : '';
  if (copies + mirrored === 0) return from === '' ? null : `cut${from}`;
  if (mirrored === 0) return `cut ${copies}${from}`;
  const many = copies === 0 ? mirrored : `${copies}, and ${mirrored}`;
  return `cut ${many} turned over${from === '' ? '' : `,${from}`}`;
}

/** Two lines of words, the base line of the first at the point. */
export const captionMarks = (
  name: string,
  heading: string,
  facts: string,
  { x, y }: Point<'page'>,
): readonly Mark[] => [
  textMark('caption', name, heading, { x, y }, NAME),
  textMark('caption', name, facts, { x, y: y + 10 }, { ...FACT, ink: QUIET }),
];

function wayOf(job: CheckedTemplates, index: number, name: string, turn: 0 | 90): TemplateWay {
  const { marks: shape, cuttingLine, width: wide, height: high } = drawnTemplate(job, index, name, turn);
  const facts = factsOf(job);
  const cut = cutText(job, index);
  const heading = shortened(
    cut === null ? name : `${name}: ${cut}`,
    NAME.size,
    NAME.weight,
    Math.max(wide, HEADING),
  );
  const words = Math.max(
    textWidth(heading, NAME.size, NAME.weight),
    textWidth(facts, FACT.size, FACT.weight),
  );
  const marks = [...shape, ...captionMarks(name, heading, facts, { x: 0, y: high + 10 })];
  const size = { width: Math.max(wide, words), height: high + CAPTION };
  const caption = edgesOf<'page'>([
    { x: 0, y: high },
    { x: words, y: high },
    { x: words, y: high + CAPTION },
    { x: 0, y: high + CAPTION },
  ]).map(({ a }) => a);
  return { ...wayOver([cuttingLine, caption], size, turn === 0), marks };
}
