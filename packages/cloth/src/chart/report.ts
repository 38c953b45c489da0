import { SAME_COORDINATE } from '@seamwright/geometry';
import type { ClothPlan } from '../buying/plan-cloths.ts';
import type { Strip } from '../buying/plan-strips.ts';
import type { ChartRow, Cloth, CutRules, CutShape, PieceCut } from '../types.ts';

/** The cutting report, `seamwright-cutting/1`: what outside programs read. See docs/file-format.md. */
export interface CuttingReport {
  readonly format: 'seamwright-cutting/1';
  readonly unit: 'in';
  readonly allowance: number;
  readonly spare: number;
  readonly roundUpTo: number;
  readonly pieces: readonly {
    readonly name: string;
    readonly cloth: string;
    readonly shape: CutShape;
    readonly width: number;
    readonly height: number;
    readonly angle: number;
    readonly toleranceShift: number;
    readonly toleranceAngle: number;
  }[];
  readonly rows: readonly {
    readonly cloth: string;
    readonly shape: CutShape;
    readonly width: number;
    readonly height: number;
    readonly cut: number;
    readonly yields: number;
    readonly pieces: readonly string[];
  }[];
  readonly cloths: readonly {
    readonly cloth: string;
    readonly usableWidth: number;
    readonly strips: readonly {
      readonly height: number;
      readonly count: number;
      /** `height` is the piece's own, where it is trimmed from a higher strip. */
      readonly cuts: readonly { readonly width: number; readonly count: number; readonly height?: number }[];
    }[];
    readonly lengthInches: number;
    readonly buyYards: number;
    readonly buyMetres: number;
    readonly provenLeast: boolean;
    readonly wastePercent: number;
  }[];
}

/**
 * What is cut and bought, as outside programs read it. Fabrics are named; where two have one name, by name and id; where
 * the maker chose none, by nothing.
 *
 * @param pieces of one block, or of several with names that tell the blocks apart
 */
export function cuttingReport(
  pieces: readonly PieceCut[],
  rules: CutRules,
  rows: readonly ChartRow[],
  plans: readonly ClothPlan[],
): CuttingReport {
  const nameOf = clothNames(plans.map(({ cloth }) => cloth));
  return {
    format: 'seamwright-cutting/1',
    unit: 'in',
    allowance: rules.allowance,
    spare: rules.spare,
    roundUpTo: rules.roundUpTo,
    pieces: pieces.map(({ name, cloth, shape, width, height, angle, toleranceShift, toleranceAngle }) => ({
      name,
      cloth: nameOf(cloth),
      shape,
      width: tidy(width),
      height: tidy(height),
      angle: tidy(angle),
      toleranceShift: tidy(toleranceShift),
      toleranceAngle: tidy(toleranceAngle),
    })),
    rows: rows.map(({ cloth, shape, width, height, cut, yields, pieces: names }) => ({
      cloth: nameOf(cloth),
      shape,
      width: tidy(width),
      height: tidy(height),
      cut,
      yields,
      pieces: names,
    })),
    cloths: plans.map(({ cloth, plan, purchase, wastePercent }) => ({
      cloth: nameOf(cloth.id),
      usableWidth: tidy(cloth.usableWidth),
      strips: plan.strips.map(stripOf),
      lengthInches: tidy(plan.lengthInches),
      buyYards: purchase.buyYards,
      buyMetres: purchase.buyMetres,
      provenLeast: plan.provenLeast,
      wastePercent: Math.round(wastePercent * 10) / 10,
    })),
  };
}

const stripOf = ({ height, count, cuts }: Strip): CuttingReport['cloths'][number]['strips'][number] => ({
  height: tidy(height),
  count,
  cuts: cuts.map((cut) => ({
    width: tidy(cut.width),
    count: cut.count,
    ...(cut.height !== undefined && { height: tidy(cut.height) }),
  })),
});

/** What each fabric is called in reports, by its id. */
export function clothNames(cloths: readonly Cloth[]): (id: string | null) => string {
  const names = new Map(
    cloths.map(({ id, name }) => {
      const isShared = cloths.some((other) => other.id !== id && other.name === name);
      return [id, isShared && id !== '' ? `${name} (${id})`.trim() : name];
    }),
  );
  return (id) => names.get(id ?? '') ?? '';
}

/** Without the noise of the last digits: to {@link SAME_COORDINATE}, which is less than anything that is cut. */
export const tidy = (value: number): number => {
  const steps = Math.round(1 / SAME_COORDINATE);
  return Math.round(value * steps) / steps;
};
