import type { Arrangement } from '@seamwright/arrangement';
import { convexHull, edgesOf, middleOfCorners } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import type { PieceShape } from '../placing/nominal-place.ts';
import type { Cloth, CutRules, PieceCut } from '../types.ts';
import { lineAngle } from './angles.ts';
import { tolerances } from './cover.ts';
import { ALONG_GRAIN, type Lay, laysAlong, leastHalfRectangle } from './half-rectangles.ts';
import { hasOuterBias } from './outer-bias.ts';
import { type PatchNeed, patchNeeds } from './patch-needs.ts';
import { rectangleAt, smallestRectangle } from './rectangles.ts';

export interface CutRequest {
  readonly arrangement: Arrangement;
  readonly plan: Pick<SewingPlan, 'sections'>;
  readonly rules: CutRules;
  /** The fabric of a patch, by its index; null where the maker chose none. */
  readonly clothOf: (patch: number) => Cloth | null;
  /**
   * Whether pieces of a fabric are laid along its grain and not along the sew line; those that say so, if not given.
   * Directional ones always are.
   */
  readonly alongGrain?: (cloth: Cloth) => boolean;
  /** How many blocks are made: it decides whether halves find their partner. One, if not given. */
  readonly copies?: number;
  /** Size that is sewn ÷ size that is drawn; 1, if not given. */
  readonly scale?: number;
}

/**
 * The piece to cut for each patch that a foundation holds, in working order. Each covers what {@link patchNeeds} says
 * wherever it is laid within the rules' spare and turn, and is, in its shape and direction, the smallest multiple of
 * `roundUpTo` that does.
 *
 * - Rectangles lie along the sew line, or along the grain; first patches, which are sewn to nothing, along the edge
 *   along which they are smallest.
 * - Half-rectangles, two from a rectangle cut corner to corner, have a leg or the long side along the sew line, or the
 *   legs along the grain. They are taken where those of one fabric and size, over all copies, take less fabric than
 *   rectangles would. Prints with an up get none: of two halves one would stand on its head.
 *
 * The rules must be sound ({@link checkCutRules}).
 */
export function cutPieces({
  arrangement,
  plan,
  rules,
  clothOf,
  alongGrain = ({ straight = false }) => straight,
  copies = 1,
  scale = 1,
}: CutRequest): readonly PieceCut[] {
  const choices = patchNeeds(arrangement, plan, rules.allowance, scale).map((need): Choice => {
    const cloth = clothOf(need.patch);
    const onGrain = cloth !== null && (cloth.directional || alongGrain(cloth));
    const whole = wholeFor(need, rules, onGrain);
    const half = cloth?.directional
      ? null
      : leastHalfRectangle(need.needed, laysFor(need, onGrain), rules, 2 * areaOf(whole));
    return { need, cloth: cloth?.id ?? null, whole, half };
  });

  const alike = new Map<string, Choice[]>();
  for (const choice of choices) {
    if (choice.half === null) continue;
    const key = JSON.stringify([choice.cloth, choice.half.width, choice.half.height]);
    alike.set(key, [...(alike.get(key) ?? []), choice]);
  }
  const halved = new Set([...alike.values()].filter((group) => savesInHalves(group, copies)).flat());
  return choices.map((choice): PieceCut => {
    const { need, cloth, whole, half } = choice;
    const piece = half !== null && halved.has(choice) ? half : whole;
    return {
      patch: need.patch,
      name: need.name,
      cloth,
      ...piece,
      ...tolerances(piece, need.needed),
      ...(hasOuterBias(arrangement, need.patch, piece.angle) && { outerBias: true }),
    };
  });
}

/** What a patch's piece may be. */
interface Choice {
  readonly need: PatchNeed;
  readonly cloth: string | null;
  readonly whole: PieceShape;
  readonly half: PieceShape | null;
}

/** Whether patches of one fabric and size of half-rectangle take less fabric in halves; an odd half is left over. */
function savesInHalves(group: readonly Choice[], copies: number): boolean {
  const half = group[0]!.half!;
  const whole = group.reduce((sum, choice) => sum + areaOf(choice.whole), 0) * copies;
  return Math.ceil((group.length * copies) / 2) * areaOf(half) < whole;
}

/** Of the whole rectangle, square inches. */
const areaOf = ({ width, height }: PieceShape): number => width * height;

function wholeFor({ sewLine, needed }: PatchNeed, rules: CutRules, onGrain: boolean): PieceShape {
  if (onGrain) return rectangleAt(needed, 0, rules);
  return sewLine === null ? smallestRectangle(needed, rules) : rectangleAt(needed, lineAngle(sewLine), rules);
}

function laysFor({ sewLine, needed, finished }: PatchNeed, onGrain: boolean): readonly Lay[] {
  if (onGrain) return ALONG_GRAIN;
  // The middle is on the same side of the sew line as the patch.
  if (sewLine !== null) return laysAlong(sewLine, middleOfCorners(finished));
  const hull = convexHull(needed);
  return edgesOf(hull).flatMap((edge) => laysAlong(edge, middleOfCorners(hull)));
}
