import {
  allowanceOutline,
  boundingBox,
  compose,
  type Point,
  type Polygon,
  reflection,
  type Segment,
  scaling,
  type Transform,
  transformPoint,
  transformPolygon,
  transformSegment,
  translation,
} from '@seamwright/geometry';
import type { CheckedJob } from '../job.ts';
import { stopTicks } from './match-marks.ts';
import { type OpenStretch, openStretches } from './open-stretches.ts';
import { type NoteOf, type PatchFacts, patchFacts } from './patch-facts.ts';
import { sectionRing } from './ring.ts';
import { runOns } from './run-ons.ts';
import { type MatchMark, type MatchMarks, sharedMarks } from './shared-marks.ts';
import { lettersOf, type Template } from './templates.ts';
import type { Wanted } from './wanted.ts';

/** A patch of a foundation, and what is to be written about it. */
export interface Piece extends PatchFacts {
  /** Section letter and place in the piecing order: `A1`. */
  readonly name: string;
  readonly polygon: Polygon<'print'>;
  /** The point deepest inside the patch. */
  readonly at: Point<'print'>;
  /** Distance of that point from the patch's boundary, inches. */
  readonly depth: number;
}

/**
 * One section's foundation as it is printed: inches, the mirror image of the section as sewn and seen from the front, up
 * still up. The smallest upright rectangle round the cutting line starts at (0, 0).
 */
export interface Foundation {
  /** Its own in the whole document, the letter or the letter with what sets it apart; its marks go by it. */
  readonly key: string;
  /** Of the section that is laid out, and by which its pieces are named. */
  readonly letter: string;
  /** Of all sections that are sewn on prints of it; that one first, those of the other face with a word that says so. */
  readonly letters: readonly string[];
  /** The letter of the foundation of which it is the mirrored copy, where that is to be said; else null. */
  readonly mirroredOf: string | null;
  /** Whether it is for blocks that are the mirror image of the drawing; its print looks as the block is drawn. */
  readonly mirroredBlock: boolean;
  readonly outline: Polygon<'print'>;
  readonly cuttingLine: Polygon<'print'>;
  /** One for each patch but the first, in piecing order. */
  readonly sewLines: readonly Segment<'print'>[];
  /** From the finished outline to the cutting line, on the line of the sew line that it carries on. */
  readonly runOns: readonly Segment<'print'>[];
  readonly matchMarks: MatchMarks<'print'>;
  /** Two side by side, as match marks are, where the sewing of a partial seam stops. */
  readonly stopMarks: readonly Segment<'print'>[];
  /** Along the finished outline, where partial seams are left open. */
  readonly openStretches: readonly OpenStretch<'print'>[];
  /** In piecing order. */
  readonly pieces: readonly Piece[];
  /** Inches. */
  readonly allowance: number;
  /** Width and height of the cutting line, inches. */
  readonly width: number;
  readonly height: number;
  /** Finished size of the section, inches. */
  readonly finished: { readonly width: number; readonly height: number };
  /** Finished size of the whole block, inches. */
  readonly block: { readonly width: number; readonly height: number };
  /** How many are to be printed. */
  readonly count: number;
}

/** The template's section at its size, with its allowance, mirrored; the match marks are those of its copies, too. */
export function foundationOf(job: CheckedJob, { key, template, size, count, noteOf }: Wanted): Foundation {
  const { arrangement, allowance } = job;
  const { section, mirroredOf, mirroredBlock } = template;
  const enlarge = scaling(size.scale);
  const outline = transformPolygon(enlarge, section.outline);
  const cuttingLine = allowanceOutline(outline, allowance).outline;
  const sewLines = section.sewLines.map((line) => transformSegment(enlarge, line));
  const ring = sectionRing(arrangement, section, enlarge);
  const bounds = { outline, cuttingLine, allowance };

  const box = boundingBox(cuttingLine);
  const print = mirroredBlock ? unmirrored(box) : printTransform(box);
  const toPrint = (segment: Segment) => transformSegment(print, segment);
  const marks = sharedMarks(arrangement, job.matchNumbers, template, enlarge, ring, bounds);
  const markToPrint = (mark: MatchMark): MatchMark<'print'> => ({ ...mark, ...toPrint(mark) });
  const finished = boundingBox(outline);
  const opened = openStretches(job.plan, section).map((stretch) => ({
    ...stretch,
    ...transformSegment(enlarge, stretch),
  }));
  return {
    key,
    letter: section.letter,
    letters: lettersOf(template),
    mirroredOf,
    mirroredBlock,
    outline: transformPolygon(print, outline),
    cuttingLine: transformPolygon(print, cuttingLine),
    sewLines: sewLines.map(toPrint),
    runOns: runOns(section.sewLines, enlarge, ring, bounds).map(toPrint),
    matchMarks: { ticks: marks.ticks.map(markToPrint), corners: marks.corners.map(markToPrint) },
    stopMarks: opened.flatMap(({ a, sewnTo }) => (sewnTo === null ? [] : stopTicks(a, bounds))).map(toPrint),
    openStretches: opened.map((stretch) => ({ ...stretch, ...toPrint(stretch) })),
    pieces: piecesOf(job, template, compose(enlarge, print), size.scale, noteOf),
    allowance,
    width: box.maxX - box.minX,
    height: box.maxY - box.minY,
    finished: { width: finished.maxX - finished.minX, height: finished.maxY - finished.minY },
    block: { width: size.width, height: size.height },
    count,
  };
}

/** Mirrors, and moves the box's corner to (0, 0). */
const printTransform = (box: { minX: number; minY: number; maxX: number }): Transform<'block', 'print'> =>
  compose(reflection<'block', 'block'>((box.minX + box.maxX) / 2), {
    a: 1,
    b: 0,
    c: 0,
    d: 1,
    e: -box.minX,
    f: -box.minY,
  });

/** Moves the box's corner to (0, 0): the mirror image of a mirrored block. */
const unmirrored = ({ minX, minY }: { minX: number; minY: number }): Transform<'block', 'print'> =>
  translation(-minX, -minY);

const piecesOf = (
  job: CheckedJob,
  template: Template,
  print: Transform<'block', 'print'>,
  scale: number,
  noteOf: NoteOf,
): readonly Piece[] =>
  template.section.order.map((index, k) => {
    const patch = job.arrangement.patches[index]!;
    return {
      name: `${template.section.letter}${k + 1}`,
      polygon: transformPolygon(print, patch.polygon),
      at: transformPoint(print, patch.heart),
      depth: patch.depth * scale,
      ...patchFacts(job, noteOf, template, k),
    };
  });
