import { areaOfTurn, lerp, type Point, type Polygon, type Segment } from '@seamwright/geometry';

/**
 * The lines of a block that is pieced patch by patch: the first patch, then one patch for each seam.
 *
 * A seam is given by two points of its line; all that was sewn before lies on the right hand of someone who walks from
 * the first to the second. So the patch sewn last is all that lies beyond the last seam, the one before it what lies
 * beyond its own seam and within the last, and so on: the lines are found from the last to the first. A block of such
 * lines is always sewn on one foundation, in this very order.
 *
 * @param outline convex, clockwise on the screen
 * @param seams in the order of sewing; each runs through what is left of the block by then
 * @returns the lines, the last seam first, each as long as the seam is
 */
export function pieced(outline: Polygon, seams: readonly Segment[]): readonly Segment[] {
  let region = outline;
  const lines: Segment[] = [];
  for (const seam of [...seams].reverse()) {
    const { kept, ends } = cutAlong(region, seam);
    const [a, b] = ends;
    if (a === undefined || b === undefined) throw new RangeError('A seam misses the block');
    lines.push({ a, b });
    region = kept;
  }
  return lines;
}

/** What lies on the right hand of the line, and where the line enters and leaves the region. */
function cutAlong(
  region: Polygon,
  { a, b }: Segment,
): { readonly kept: Polygon; readonly ends: readonly Point[] } {
  const kept: Point[] = [];
  const ends: Point[] = [];
  region.forEach((corner, i) => {
    const next = region[(i + 1) % region.length]!;
    const [side, sideNext] = [areaOfTurn(a, b, corner), areaOfTurn(a, b, next)];
    if (side >= 0) kept.push(corner);
    if (side === 0) ends.push(corner);
    else if (side * sideNext < 0) {
      const crossing = lerp(corner, next, side / (side - sideNext));
      kept.push(crossing);
      ends.push(crossing);
    }
  });
  return { kept, ends };
}

/** Seams along the axes, named by where the patch that they sew on lies. */
export const seam = {
  above: (y: number): Segment => ({ a: { x: 0, y }, b: { x: 1, y } }),
  below: (y: number): Segment => ({ a: { x: 1, y }, b: { x: 0, y } }),
  leftOf: (x: number): Segment => ({ a: { x, y: 1 }, b: { x, y: 0 } }),
  rightOf: (x: number): Segment => ({ a: { x, y: 0 }, b: { x, y: 1 } }),
};
