import type { Patch } from '@seamwright/arrangement';
import { edgesOf, type Segment } from '@seamwright/geometry';

/**
 * How wide words may be that stand in the middle under a patch's heart, without touching its sides: inches; 0 where a side
 * passes between the heart and the words' foot, or the patch has a hole.
 *
 * @param top of the words, inches below the heart
 * @param bottom of the words, inches below the heart
 */
export function roomUnder({ polygon, holes, heart }: Patch, top: number, bottom: number): number {
  if (holes.length > 0) return 0;
  let half = Infinity;
  for (const side of edgesOf(polygon)) {
    const under = across(side, heart.y, heart.y + bottom);
    if (under !== null && under.from <= heart.x && under.to >= heart.x) return 0;
    const beside = across(side, heart.y + top, heart.y + bottom);
    if (beside !== null)
      half = Math.min(half, Math.abs(beside.from - heart.x), Math.abs(beside.to - heart.x));
  }
  return half === Infinity ? 0 : 2 * half;
}

/** From where to where, left to right, a side reaches between two heights; null where it is not between them. */
function across({ a, b }: Segment, top: number, bottom: number): { from: number; to: number } | null {
  if (Math.max(a.y, b.y) < top || Math.min(a.y, b.y) > bottom) return null;
  const at = (y: number) => Math.min(1, Math.max(0, (y - a.y) / (b.y - a.y)));
  // A level side has all of itself at one height.
  const shares = a.y === b.y ? [0, 1] : [at(top), at(bottom)];
  const xs = shares.map((share) => a.x + share * (b.x - a.x));
  return { from: Math.min(...xs), to: Math.max(...xs) };
}
