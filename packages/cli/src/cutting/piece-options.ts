import { type CutRules, USUAL_CUTS } from '@seamwright/cloth';
import { ALLOWANCE_RANGE, type LengthRange } from '@seamwright/geometry';
import type { Option } from '../call.ts';
import type { OptionReader } from '../option-reader.ts';

/** By what pieces are cut, but for the allowance. */
export type CutSizes = Omit<CutRules, 'allowance'>;

export const PIECE_OPTIONS: readonly Option[] = [
  {
    name: 'spare',
    value: 'S',
    says: 'how far off a piece may be laid and still cover; 1/4in unless\nyou say otherwise',
  },
  {
    name: 'turn',
    value: 'T',
    says: 'degrees by which it may be turned at the same time; 0 unless you say\notherwise',
  },
  {
    name: 'round-up-to',
    value: 'R',
    says: 'what sizes are rounded up to, such as 1/8in or 5mm; 1/4in unless you\nsay otherwise',
  },
];

/** Any length at all: what uses it says what is wrong with 0. */
export const ANY_LENGTH: LengthRange = { least: 0, most: 1000 };

export const readPieces = (read: OptionReader): CutSizes => ({
  spare: read.length('spare', USUAL_CUTS.spare, ALLOWANCE_RANGE),
  turn: read.number('turn', USUAL_CUTS.turn),
  roundUpTo: read.length('round-up-to', USUAL_CUTS.roundUpTo, ANY_LENGTH),
});
