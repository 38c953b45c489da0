import type { Arrangement } from '@seamwright/arrangement';
import {
  allowanceOutline,
  commonParts,
  contains,
  dot,
  type Point,
  type Polygon,
  type Segment,
  scale,
  scaling,
  subtract,
  transformPoint,
  transformPolygon,
  transformSegment,
} from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import { outward } from '../placing/parts-outside.ts';

/** What one patch asks of the piece that is cut for it. Inches at the size that is sewn. */
export interface PatchNeed {
  /** Its index in the arrangement. */
  readonly patch: number;
  /** Letter of the section and place in its order: `A1`. */
  readonly name: string;
  /** The stretch by which it is sewn on; null for a first patch, which is only laid on the fabric side. */
  readonly sewLine: Segment | null;
  /** The finished patch, clockwise. */
  readonly finished: Polygon;
  /** What its piece must cover, clockwise: the patch and its allowance, as far as the section is not trimmed off. */
  readonly needed: Polygon;
}

/**
 * What each patch asks of its piece: the finished patch, grown by the allowance on every side
 * ({@link allowanceOutline}, which cuts sharp tips off square), out to the cutting line of its section and no farther.
 *
 * Inside a section the allowance lies under the neighbours; at its edge it ends where the section is trimmed. The two
 * differ at corners of the section alone: the tip of a half-square triangle's allowance would reach 2.4 allowances
 * beyond the corner of the block, where it is trimmed off.
 *
 * In working order: section by section, in piecing order. Patches that no foundation holds have no piece.
 *
 * @param allowance inches at the size that is sewn
 * @param size size that is sewn ÷ size that is drawn
 */
export function patchNeeds(
  arrangement: Arrangement,
  plan: Pick<SewingPlan, 'sections'>,
  allowance: number,
  size = 1,
): readonly PatchNeed[] {
  const enlarge = scaling(size);
  return plan.sections.flatMap(({ letter, order, sewLines, outline }) => {
    const cuttingLine = allowanceOutline(transformPolygon(enlarge, outline), allowance).outline;
    return order.map((index, k): PatchNeed => {
      const { polygon, heart } = arrangement.patches[index]!;
      const finished = transformPolygon(enlarge, polygon);
      const parts = commonParts(allowanceOutline(finished, allowance).outline, cuttingLine);
      // Across a notch of the section there may be other parts: those are allowance of other patches.
      const own = parts.find((part) => contains(part, transformPoint(enlarge, heart)) !== 'outside');
      if (own === undefined) throw new Error(`patch ${letter}${k + 1} lies outside its section`);
      const sewLine = k === 0 ? null : transformSegment(enlarge, sewLines[k - 1]!);
      return { patch: index, name: `${letter}${k + 1}`, sewLine, finished, needed: own };
    });
  });
}

/**
 * Square to the sew line, of length 1, away from the patch; a patch that reaches to both sides of the whole line (with a
 * notch) lies where it reaches farther.
 */
export function pastSewLine(sewLine: Segment, finished: Polygon): Point {
  const normal = outward(sewLine);
  const reaches = finished.map((p) => dot(subtract(p, sewLine.a), normal));
  return Math.max(...reaches) > -Math.min(...reaches) ? scale(normal, -1) : normal;
}
