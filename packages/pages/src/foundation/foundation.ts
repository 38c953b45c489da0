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
import { stopTicks, tick } from './match-marks.ts';
import type { OpenStretch } from './open-stretches.ts';
import { type NoteOf, type PatchFacts, patchFacts } from './patch-facts.ts';
import { throughAllowance } from './run-ons.ts';
import { type SectionShape, sectionShape } from './section-shape.ts';
import type { MatchMarks } from './shared-marks.ts';
import type { Template } from './templates.ts';
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

/**
 * Makes a job's foundations: the template's section at its size, with its allowance, mirrored; the match marks are those of its copies,
 * too. What they have in every size is worked out once.
 */
export function foundationsOf(job: CheckedJob): (wanted: Wanted) => Foundation {
  const shapes = new Map<Template, SectionShape>();
  return (wanted) => {
    const shape = shapes.get(wanted.template) ?? sectionShape(job, wanted.template);
    shapes.set(wanted.template, shape);
    return foundationAt(job, wanted, shape);
  };
}

function foundationAt(
  job: CheckedJob,
  { key, template, size, count, noteOf }: Wanted,
  shape: SectionShape,
): Foundation {
  const { allowance } = job;
  const { section, mirroredOf, mirroredBlock } = template;
  const enlarge = scaling(size.scale);
  const outline = transformPolygon(enlarge, section.outline);
  const cuttingLine = allowanceOutline(outline, allowance).outline;
  const bounds = { outline, cuttingLine, allowance };
  const larger = (point: Point) => transformPoint(enlarge, point);

  const box = boundingBox(cuttingLine);
  const print = mirroredBlock ? unmirrored(box) : printTransform(box);
  const toPrint = (segment: Segment) => transformSegment(print, segment);
  const wholly = compose(enlarge, print);
  const finished = boundingBox(outline);
  const runs = shape.runs.map(({ end, onward }) => {
    const from = larger(end);
    return { a: from, b: throughAllowance(from, onward, bounds) };
  });
  return {
    key,
    letter: section.letter,
    letters: shape.letters,
    mirroredOf,
    mirroredBlock,
    outline: transformPolygon(print, outline),
    cuttingLine: transformPolygon(print, cuttingLine),
    sewLines: section.sewLines.map((line) => transformSegment(wholly, line)),
    runOns: allowance === 0 ? [] : runs.map(toPrint),
    matchMarks: {
      ticks: shape.matches.inside.map(({ at, onward, letters, numbers }) => {
        const { a, b } = toPrint(tick(larger(at), onward, bounds));
        return { a, b, letters, numbers };
      }),
      corners: shape.matches.corners.map((mark) => {
        const { a, b } = transformSegment(wholly, mark);
        return { a, b, letters: mark.letters, numbers: mark.numbers };
      }),
    },
    stopMarks: shape.stops.flatMap(({ at, onward }) => stopTicks(larger(at), onward, bounds)).map(toPrint),
    openStretches: shape.opened.map((stretch) => ({ ...stretch, ...transformSegment(wholly, stretch) })),
    pieces: piecesOf(job, template, wholly, size.scale, noteOf),
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
    const { fabric, note, upright, differs } = patchFacts(job, noteOf, template, k);
    return {
      name: `${template.section.letter}${k + 1}`,
      polygon: transformPolygon(print, patch.polygon),
      at: transformPoint(print, patch.heart),
      depth: patch.depth * scale,
      fabric,
      note,
      upright,
      differs,
    };
  });
