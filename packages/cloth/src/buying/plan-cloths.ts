import { formatCutSize, formatLength, type LengthUnit, ok, type Result } from '@seamwright/geometry';
import { type ChartRow, type Cloth, mayTurn } from '../types.ts';
import { type BuyingRules, PLAIN_BUYING, type Purchase, toBuy } from './buying.ts';
import {
  FAT_EIGHTH,
  FAT_QUARTER,
  METRIC_FAT_QUARTER,
  planSheets,
  type Sheet,
  type SheetPlan,
} from './plan-sheets.ts';
import { planStrips, type Rectangles, type StripPlan } from './plan-strips.ts';
import type { LoadSolver } from './strips/least.ts';

/** Usable width where a fabric does not say its own: Generations Quilt Patterns; other houses take 42. */
export const USABLE_WIDTH = 40;

export interface PlanRules extends BuyingRules {
  /** Of fabrics that are not in the list of cloths, inches. */
  readonly usableWidth: number;
  /** Pieces may be trimmed from higher strips ({@link StripRules.trim}). */
  readonly trim: boolean;
  /** One of the largest size is cut more than is needed, from each fabric. */
  readonly spareOfLargest: boolean;
  /** Pieces of fabric as they are sold cut, that might do instead. */
  readonly sheets: readonly Sheet[];
}

export const PLAIN_RULES: PlanRules = {
  ...PLAIN_BUYING,
  usableWidth: USABLE_WIDTH,
  trim: false,
  spareOfLargest: false,
  sheets: [FAT_QUARTER, FAT_EIGHTH, METRIC_FAT_QUARTER],
};

/** What the maker should know of one size; or, where edges on the block's outside are on the bias, of all sizes of a fabric. */
export type ClothNote = {
  /** Names of the patches. */
  readonly pieces: readonly string[];
} & (
  | {
      readonly kind: 'along-length' | 'grain-across' | 'print-on-side' | 'too-large';
      readonly width: number;
      readonly height: number;
    }
  | { readonly kind: 'outer-bias' }
);

/** What is cut from one fabric, and what is bought of it. */
export interface ClothPlan {
  /** Of patches without a fabric: with an empty id and name. */
  readonly cloth: Cloth;
  readonly plan: StripPlan;
  readonly purchase: Purchase;
  /** The part of the strips that is in none of the pieces, per cent; a spare piece and the odd half of a rectangle count as waste. */
  readonly wastePercent: number;
  /** For each of {@link PlanRules.sheets}. */
  readonly sheets: readonly SheetPlan[];
  readonly notes: readonly ClothNote[];
}

/**
 * Plans each fabric of a chart: strips from the least length, what is bought, and how many fat quarters would do instead.
 * What is too large for the fabric is left out and noted.
 *
 * Problems: those of {@link planStrips} and {@link toBuy}.
 *
 * @param rows a chart whose half-rectangles are paired across sections
 * @returns in the order of the rows
 */
export async function planCloths(
  rows: readonly ChartRow[],
  cloths: readonly Cloth[],
  rules: PlanRules,
  load?: LoadSolver,
): Promise<Result<ClothPlan[]>> {
  const plans: ClothPlan[] = [];
  for (const id of new Set(rows.map((row) => row.cloth))) {
    const cloth = cloths.find((each) => each.id === id) ?? {
      id: id ?? '',
      name: '',
      usableWidth: rules.usableWidth,
      directional: false,
    };
    const own = rows.filter((row) => row.cloth === id);
    const plan = await planCloth(cloth, own, rules, load);
    if (!plan.ok) {
      const where = cloth.name === '' ? plan.problem.where : `fabric "${cloth.name}"`;
      return { ok: false, problem: { ...plan.problem, where } };
    }
    plans.push(plan.value);
  }
  return ok(plans);
}

/** A2 before A10. */
const byNumber = new Intl.Collator('en', { numeric: true });

async function planCloth(
  cloth: Cloth,
  rows: readonly ChartRow[],
  rules: PlanRules,
  load?: LoadSolver,
): Promise<Result<ClothPlan>> {
  const { usableWidth, directional } = cloth;
  const upright = !mayTurn(cloth);
  const { trim } = rules;
  const rectangles = rows.map(({ width, height, cut }): Rectangles => ({ width, height, count: cut }));
  const wanted = rules.spareOfLargest ? withSpare(rectangles) : rectangles;
  const plan = await planStrips(wanted, { usableWidth, upright, trim }, load);
  if (!plan.ok) return plan;
  const { lengthInches, alongLength, tooLarge } = plan.value;
  const purchase = toBuy(lengthInches, rules);
  if (!purchase.ok) return purchase;
  const sheets: SheetPlan[] = [];
  for (const sheet of rules.sheets) {
    const planned = await planSheets(wanted, sheet, { upright, trim }, load);
    if (!planned.ok) return planned;
    sheets.push(planned.value);
  }
  const outerBias = rows.flatMap((row) => row.outerBias ?? []).sort(byNumber.compare);
  const noted = (kind: Exclude<ClothNote['kind'], 'outer-bias'>, all: readonly Rectangles[]): ClothNote[] =>
    all.map((each) => {
      const { width, height, pieces } = rows[wanted.indexOf(each)]!;
      return { kind, width, height, pieces };
    });
  const pieceArea = rows.reduce(
    (sum, { shape, width, height, yields }, i) =>
      sum + (tooLarge.includes(wanted[i]!) ? 0 : (width * height * yields) / (shape === 'rectangle' ? 1 : 2)),
    0,
  );
  const area = lengthInches * usableWidth;
  return ok({
    cloth,
    plan: plan.value,
    purchase: purchase.value,
    wastePercent: area === 0 ? 0 : 100 * (1 - pieceArea / area),
    sheets,
    notes: [
      ...noted(directional ? 'print-on-side' : upright ? 'grain-across' : 'along-length', alongLength),
      ...noted('too-large', tooLarge),
      ...(outerBias.length > 0 ? [{ kind: 'outer-bias', pieces: outerBias } as const] : []),
    ],
  });
}

function withSpare(rectangles: readonly Rectangles[]): Rectangles[] {
  const areas = rectangles.map(({ width, height }) => width * height);
  const largest = areas.indexOf(Math.max(...areas));
  return rectangles.map((each, i) => (i === largest ? { ...each, count: each.count + 1 } : each));
}

/** A note in a maker's words. */
export function noteText(note: ClothNote, { usableWidth }: Cloth, unit: LengthUnit): string {
  const { kind, pieces } = note;
  if (kind === 'outer-bias')
    return `${pieces.join(', ')}: the edge on the block’s outside is cut on the bias, and stretches: handle it gently, or let the pieces of this fabric lie along the block’s upright`;
  const { width, height } = note;
  const what = `${pieces.join(', ')}: cut ${formatCutSize(width, height, unit)}, and the fabric is ${formatLength(usableWidth, unit)} wide`;
  switch (kind) {
    case 'along-length':
      return `${what}: cut along the length of the fabric`;
    case 'grain-across':
      return `${what}: cut along the length of the fabric, so the grain runs across the piece`;
    case 'print-on-side':
      return `${what}: cut along the length of the fabric, so the print lies on its side`;
    case 'too-large':
      return `${what}: choose a wider fabric, or divide the patch; nothing is planned for it`;
  }
}
