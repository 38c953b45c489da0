import { type Drawing, drawingFromSegments } from '@seamwright/arrangement';
import { checkLength, fail, type Polygon, type Result, type Segment } from '@seamwright/geometry';
import { checkLengths, checkOutline, passes } from '../checks.ts';
import { withFactsByPlace } from '../facts-by-place.ts';

/** Something about a starting point that the maker chooses. */
export interface Parameter<Id extends string = string> {
  readonly id: Id;
  /** Its name for the maker, e.g. `Rounds`. */
  readonly label: string;
  /** `count`: a whole number. `length`: inches. `share`: a part of a length, between 0 and 1. */
  readonly kind: 'count' | 'length' | 'share';
  /** Both ends included. */
  readonly least: number;
  readonly most: number;
  readonly usual: number;
}

/** A dissection known by its traditional name, made to the maker's numbers. */
export interface StartingPoint {
  /** For programs; never changes. */
  readonly id: string;
  /** The name that quilters know it by. */
  readonly name: string;
  /** How it is made up, in one sentence. */
  readonly about: string;
  readonly parameters: readonly Parameter[];
  /**
   * The block, its top left corner in the origin; every point knows the lines that it lies on.
   *
   * @param values by the parameters' ids; what is left out is as usual. Refused: a value out of its range, a count that
   *   is no whole number.
   */
  build(values?: Readonly<Record<string, number>>): Result<Drawing>;
}

/** An outline and the splits in it, inches. */
export interface Dissection {
  readonly outline: Polygon;
  readonly splits: readonly Segment[];
}

export const count = <Id extends string>(
  id: Id,
  label: string,
  least: number,
  most: number,
  usual: number,
): Parameter<Id> => ({ id, label, kind: 'count', least, most, usual });

export const share = <Id extends string>(
  id: Id,
  label: string,
  least: number,
  most: number,
  usual: number,
): Parameter<Id> => ({ id, label, kind: 'share', least, most, usual });

export const inches = <Id extends string>(
  id: Id,
  label: string,
  least: number,
  most: number,
  usual: number,
): Parameter<Id> => ({ id, label, kind: 'length', least, most, usual });

/** The finished side of a square block. */
export const SIDE = inches('side', 'Finished side', 3, 36, 12);

/** Makes a starting point of the way its lines are drawn. */
export function startingPoint<Id extends string>(made: {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly parameters: readonly Parameter<Id>[];
  readonly draw: (values: Readonly<Record<Id, number>>) => Dissection;
}): StartingPoint {
  const { draw, ...rest } = made;
  return {
    ...rest,
    build(values = {}) {
      const chosen: Partial<Record<Id, number>> = {};
      for (const parameter of made.parameters) {
        const value = values[parameter.id] ?? parameter.usual;
        const complaint = complaintOf(parameter, value);
        if (complaint !== null) return complaint;
        chosen[parameter.id] = value;
      }
      const { outline, splits } = draw(chosen as Record<Id, number>);
      const drawing = withFactsByPlace(drawingFromSegments(outline, splits));
      return passes(drawing, checkOutline, checkLengths());
    },
  };
}

function complaintOf({ label, kind, least, most }: Parameter, value: number) {
  const isWithin =
    kind === 'length' ? checkLength(value, 'in', { least, most }).ok : value >= least && value <= most;
  if (isWithin && (kind !== 'count' || Number.isInteger(value))) return null;
  const [from, to] =
    kind === 'share' ? [`${percent(least)} %`, `${percent(most)} %`] : [`${least}`, `${most}`];
  const unit = kind === 'length' ? ' in' : '';
  const whole = kind === 'count' ? 'a whole number ' : '';
  return fail(
    `${label} cannot be ${kind === 'share' ? `${percent(value)} %` : value}${unit}`,
    '',
    `Give ${whole}from ${from} to ${to}${unit}`,
  );
}

const percent = (value: number): number => Math.round(value * 1000) / 10;
