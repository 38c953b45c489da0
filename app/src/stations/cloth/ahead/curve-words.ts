import type { SizedNeed } from '@seamwright/cloth';
import { formatInches, formatLength, type LengthUnit } from '@seamwright/geometry';

/** How many sizes are worked out below and above the present one. */
const EACH_WAY = 8;

/**
 * The finished widths that are worked out: round ones on either side of the present one, and that, rising. Inches.
 *
 * @param step between them, inches
 */
export function widthsAround(width: number, step: number): readonly number[] {
  const middle = Math.round(width / step);
  const round = Array.from({ length: 2 * EACH_WAY + 1 }, (_, k) => (middle - EACH_WAY + k) * step);
  // A round one that is nearly the present one gives way to it.
  const others = round.filter((one) => one > 0 && Math.abs(one - width) >= step / 2);
  return [...others, width].sort((p, q) => p - q);
}

/** What is bought, as it is sold where lengths are in this unit: yards, or metres. */
export const boughtOf = ({ buyYards, buyMetres }: SizedNeed, unit: LengthUnit): number =>
  unit === 'in' ? buyYards : buyMetres;

export const boughtText = (amount: number, unit: LengthUnit): string =>
  unit === 'in' ? `${formatInches(amount)} yd` : `${Number(amount.toFixed(2))} m`;

/** The sizes just past a cliff at which more is bought, with the size before. */
export const cliffsOf = (
  needs: readonly SizedNeed[],
  unit: LengthUnit,
): readonly { readonly before: SizedNeed; readonly past: SizedNeed }[] =>
  needs.flatMap((past, k) => {
    const before = needs[k - 1];
    return before !== undefined && past.isPastCliff && boughtOf(past, unit) > boughtOf(before, unit)
      ? [{ before, past }]
      : [];
  });

/** `9 in needs ¼ yd more than 8¾ in.` */
export function cliffWords(
  { before, past }: { readonly before: SizedNeed; readonly past: SizedNeed },
  unit: LengthUnit,
): string {
  const more = boughtOf(past, unit) - boughtOf(before, unit);
  return `${formatLength(past.size, unit)} needs ${boughtText(more, unit)} more than ${formatLength(before.size, unit)}.`;
}
