import { checkLength, type LengthRange } from '@seamwright/geometry';
import {
  type FoundationJob,
  GAP_RANGE,
  type Margins,
  OVERLAP_RANGE,
  PAPER_RANGE,
  PAPERS,
  type PaperChoice,
} from '@seamwright/pages';

/** Whether what was kept between visits can be used for sheets. */

/** Inches: what a margin may be; whether a sheet has room between its margins is for the layout to say. */
export const MARGIN_RANGE: LengthRange = { least: 0, most: 4 };

const within = (value: unknown, range: LengthRange): value is number =>
  typeof value === 'number' && checkLength(value, 'in', range).ok;

export function isPaper(value: unknown): value is PaperChoice {
  if (typeof value === 'string') return Object.hasOwn(PAPERS, value);
  if (typeof value !== 'object' || value === null) return false;
  const { width, height } = value as Record<string, unknown>;
  return within(width, PAPER_RANGE) && within(height, PAPER_RANGE);
}

export function isMargins(value: unknown): value is Margins {
  if (typeof value !== 'object' || value === null) return false;
  const { top, right, bottom, left } = value as Record<string, unknown>;
  return [top, right, bottom, left].every((side) => within(side, MARGIN_RANGE));
}

export const isOverlap = (value: unknown): value is number => within(value, OVERLAP_RANGE);

export const isGap = (value: unknown): value is number => within(value, GAP_RANGE);

export const isInk = (value: unknown): value is NonNullable<FoundationJob['ink']> =>
  value === 'dark' || value === 'light';
