import type { Box } from '@seamwright/geometry';
import { captionFor } from './caption.ts';
import type { Foundation } from './foundation.ts';
import {
  CUT_WORD_ROOM,
  type DrawnFoundation,
  foundationMarks,
  roomOf,
  sizeOnSheet,
  type Turn,
} from './foundation-marks.ts';
import type { CheckedJob } from './job.ts';
import { wordMarks } from './line-words.ts';
import { moved } from './marks.ts';
import type { Mark } from './model.ts';
import { besideRegion, type Regions } from './sheet-frame.ts';

/** A foundation with its caption above it, ready to be put on a sheet. Points; its top left corner at (0, 0). */
export interface Card {
  /** The foundation's. */
  readonly key: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Points. Narrower captions would break every fact on two lines. */
const NARROWEST_CAPTION = 132;

/** A foundation is turned only where that saves cutting it up: upright ones are easier to compare with the block. */
const TURNS: readonly Turn[] = ['upright', 'turned'];

/** Points beyond a foundation, all round, in which labels may stand that find no place over it. */
const SPARE = 80;

/** The words beside a foundation's lines. */
const wordsOf = (job: CheckedJob, foundation: Foundation, drawn: DrawnFoundation, turn: Turn) =>
  wordMarks(
    foundation,
    drawn,
    united(roomOf(sizeOnSheet(foundation, turn)), drawn.extent),
    job.seamLengths ? job.unit : null,
  );

function cardFor(job: CheckedJob, foundation: Foundation, turn: Turn): Card {
  const drawn = foundationMarks(foundation, turn, SPARE);
  const { minX, minY, maxX, maxY } = united(roomOf(sizeOnSheet(foundation, turn)), drawn.extent);
  const width = maxX - minX;
  const caption = captionFor(
    job,
    foundation,
    turn,
    Math.max(width, NARROWEST_CAPTION),
    undefined,
    undefined,
    drawn.notes,
  );
  const place = { x: -minX, y: caption.height - minY };
  const marks = [...drawn.marks, ...wordsOf(job, foundation, drawn, turn)];
  return {
    key: foundation.key,
    width: Math.max(width, caption.width),
    height: caption.height + maxY - minY,
    marks: [...caption.marks, ...marks.map((mark) => moved(mark, place))],
  };
}

const united = (p: Box<'page'>, q: Box<'page'>): Box<'page'> => ({
  minX: Math.min(p.minX, q.minX),
  minY: Math.min(p.minY, q.minY),
  maxX: Math.max(p.maxX, q.maxX),
  maxY: Math.max(p.maxY, q.maxY),
});

/**
 * The foundation's card where it fits on a sheet in one piece: upright if it can, else turned a quarter; null
 * when it fits in neither way.
 */
export function wholeCard(job: CheckedJob, foundation: Foundation, regions: Regions): Card | null {
  for (const turn of TURNS) {
    const card = cardFor(job, foundation, turn);
    if ([regions.wide, regions.tall].some((region) => fits(card, region))) return card;
  }
  return null;
}

/**
 * The marks of a foundation that fits on a sheet only by itself, its caption not above it but in the corner that it
 * leaves: below it, to the right of the check squares, or to the left of it, above them. null when it fits in
 * neither way.
 */
export function soleMarks(job: CheckedJob, foundation: Foundation, regions: Regions): readonly Mark[] | null {
  for (const turn of TURNS)
    for (const region of [regions.wide, regions.tall]) {
      const corner = besideRegion(region, regions);
      const { width, height } = sizeOnSheet(foundation, turn);
      if (!fits({ width, height: height + CUT_WORD_ROOM }, region)) continue;
      const drawn = foundationMarks(foundation, turn);
      const left = (region.minX + region.maxX - width) / 2;
      const caption = captionFor(
        job,
        foundation,
        turn,
        corner.maxX - corner.minX,
        undefined,
        undefined,
        drawn.notes,
      );
      if (!fits(caption, corner)) continue;
      return [
        ...caption.marks.map((mark) => moved(mark, { x: corner.minX, y: corner.minY })),
        ...[...drawn.marks, ...wordsOf(job, foundation, drawn, turn)].map((mark) =>
          moved(mark, { x: left, y: region.minY + CUT_WORD_ROOM }),
        ),
      ];
    }
  return null;
}

const fits = (card: { width: number; height: number }, region: Box<'page'>): boolean =>
  card.width <= region.maxX - region.minX && card.height <= region.maxY - region.minY;
