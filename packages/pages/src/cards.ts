import type { Box } from '@seamwright/geometry';
import { captionFor } from './caption.ts';
import type { Foundation } from './foundation.ts';
import {
  CUT_WORD_ROOM,
  foundationMarks,
  roomOf,
  sizeOnSheet,
  type Turn,
  wordMarks,
} from './foundation-marks.ts';
import type { CheckedJob } from './job.ts';
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

/** The foundation with its words, the corner of its cutting line's upright rectangle at (0, 0). */
function wholeMarks(foundation: Foundation, turn: Turn): readonly Mark[] {
  const drawn = foundationMarks(foundation, turn);
  return [...drawn.marks, ...wordMarks(foundation, drawn, roomOf(sizeOnSheet(foundation, turn)))];
}

function cardFor(job: CheckedJob, foundation: Foundation, turn: Turn): Card {
  const size = sizeOnSheet(foundation, turn);
  const caption = captionFor(job, foundation, turn, Math.max(size.width, NARROWEST_CAPTION));
  const top = caption.height + CUT_WORD_ROOM;
  return {
    key: foundation.key,
    width: Math.max(size.width, caption.width),
    height: top + size.height,
    marks: [...caption.marks, ...wholeMarks(foundation, turn).map((mark) => moved(mark, { x: 0, y: top }))],
  };
}

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
      const left = (region.minX + region.maxX - width) / 2;
      const caption = captionFor(job, foundation, turn, corner.maxX - corner.minX);
      if (!fits(caption, corner)) continue;
      return [
        ...caption.marks.map((mark) => moved(mark, { x: corner.minX, y: corner.minY })),
        ...wholeMarks(foundation, turn).map((mark) =>
          moved(mark, { x: left, y: region.minY + CUT_WORD_ROOM }),
        ),
      ];
    }
  return null;
}

const fits = (card: { width: number; height: number }, region: Box<'page'>): boolean =>
  card.width <= region.maxX - region.minX && card.height <= region.maxY - region.minY;
