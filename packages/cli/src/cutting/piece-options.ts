import { type CutRules, USUAL_CUTS, USUAL_STEP } from '@seamwright/cloth';
import { ALLOWANCE_RANGE, type LengthRange, type LengthUnit } from '@seamwright/geometry';
import type { Option } from '../call.ts';
import type { OptionReader } from '../option-reader.ts';

/** By what pieces are cut, but for the allowance; without a step where it is the usual one. */
export interface CutSizes extends Pick<CutRules, 'spare' | 'turn'> {
  readonly roundUpTo: number | undefined;
}

/** With the step that is usual where lengths are written in this unit, if none was asked for. */
export const withStep = <Sizes extends CutSizes>(sizes: Sizes, unit: LengthUnit) => ({
  ...sizes,
  roundUpTo: sizes.roundUpTo ?? USUAL_STEP[unit],
});

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
    says: 'what sizes are rounded up to, such as 1/8in or 5mm; unless you say\notherwise 1/4in, and 5mm where the pattern is in centimetres',
  },
];

/** Any length at all: what uses it says what is wrong with 0. */
export const ANY_LENGTH: LengthRange = { least: 0, most: 1000 };

export const readPieces = (read: OptionReader): CutSizes => ({
  spare: read.length('spare', USUAL_CUTS.spare, ALLOWANCE_RANGE),
  turn: read.number('turn', USUAL_CUTS.turn),
  roundUpTo: read.length('round-up-to', undefined, ANY_LENGTH),
});
