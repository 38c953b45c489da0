import type { Arrangement } from '@seamwright/arrangement';
import { lineAngle, roundTheCircle } from './angles.ts';

/**
 * Degrees off the nearer of a fabric's two threads from which an edge counts as cut on the bias. The true bias is at 45°; what a
 * weave gives goes about with the square of sin 2θ (from memory), and at 20° is 0.4 of that. Larger would be silent about edges that
 * a hand pulls out of shape; smaller would warn of edges that hold.
 */
const BIAS_FROM = 20;

/** Degrees between a direction and the nearer thread of fabric that lies at an angle: 0 … 45. */
function offThreads(direction: number, angle: number): number {
  const off = roundTheCircle(direction - angle) % 90;
  return Math.min(off, 90 - off);
}

/**
 * Whether an edge of the patch on the block's outside is cut on the bias where it would not be if the piece lay along the block's
 * upright. Common practice: the straight of the grain belongs on the outside of a block, where nothing holds an edge until the blocks
 * are joined.
 *
 * @param angle how the piece's width lies, degrees
 */
export const hasOuterBias = ({ patches, edges, lines }: Arrangement, patch: number, angle: number): boolean =>
  patches[patch]!.border.some((index) => {
    const { left, right, line } = edges[index]!;
    const direction = lineAngle(lines[line]!);
    const isOutside = left === -1 || right === -1;
    return isOutside && offThreads(direction, 0) < BIAS_FROM && offThreads(direction, angle) >= BIAS_FROM;
  });
