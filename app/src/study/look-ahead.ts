import {
  type BlockOfCloth,
  type BulkPlace,
  bulkMap,
  bulkPlaces,
  type Cloth,
  type CutRules,
  cutPieces,
  fabricCurve,
  type LayerRegion,
  type LoadSolver,
  type PlanRules,
  type Pressing,
  type ShadeWish,
  type SizedNeed,
  shadePins,
} from '@seamwright/cloth';
import { ok, type Result } from '@seamwright/geometry';
import type { Pin, SewingPlan } from '@seamwright/sewing';

/** A block as its seams are looked at. */
type SewnBlock = Pick<BlockOfCloth, 'arrangement'> & { readonly plan: SewingPlan };

/** Where dark shows through, and how to avoid it. */
export interface ShadesSubject extends SewnBlock {
  /** By patch, 0 to 1; null where it is not known. */
  readonly lightness: readonly (number | null)[];
  readonly least: number;
  readonly pins: readonly Pin[];
}

/** For each section what would avoid show-through. */
export const shadeWishes = ({
  arrangement,
  plan,
  lightness,
  least,
  pins,
}: ShadesSubject): readonly ShadeWish[] =>
  plan.sections.map((section) =>
    shadePins(arrangement, section, (patch) => lightness[patch] ?? undefined, least, pins),
  );

export interface BulkSubject extends SewnBlock {
  readonly allowance: number;
  readonly scale: number;
  /** By join. */
  readonly pressings: readonly Pressing[];
}

export interface Bulk {
  readonly regions: readonly LayerRegion[];
  readonly places: readonly BulkPlace[];
}

export function bulkOf({ arrangement, plan, allowance, scale, pressings }: BulkSubject): Bulk {
  const pressingOf = (join: number) => pressings[join] ?? 'first';
  const regions = bulkMap({ arrangement, plan, allowance, scale, pressingOf });
  return { regions, places: bulkPlaces(regions, arrangement, allowance, scale) };
}

export interface CurveSubject {
  readonly block: BlockOfCloth;
  readonly cloths: readonly Cloth[];
  readonly cut: CutRules;
  readonly plan: PlanRules;
  /** Finished width as it is drawn, inches. */
  readonly width: number;
  /** Finished widths to work out, rising. */
  readonly widths: readonly number[];
}

/** What blocks of several finished widths take. */
export function curveOf(
  { block, cloths, cut, plan, width, widths }: CurveSubject,
  load: LoadSolver,
): Promise<Result<SizedNeed[]>> {
  const { arrangement, plan: sewing, fabrics, copies, mirrored } = block;
  const byId = new Map(cloths.map((cloth) => [cloth.id, cloth]));
  const piecesAt = (size: number) =>
    ok(
      cutPieces({
        arrangement,
        plan: sewing,
        rules: cut,
        clothOf: (patch) => byId.get(fabrics[patch] ?? '') ?? null,
        alongGrain: ({ straight = false }) => straight,
        copies: copies + mirrored,
        scale: size / width,
      }),
    );
  return fabricCurve(widths, piecesAt, { blocks: copies + mirrored, cloths, rules: plan }, load);
}
