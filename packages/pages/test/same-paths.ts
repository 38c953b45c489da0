import type { DrawnPage, DrawnPath, Spot } from '../../../e2e/support/pdf.ts';

/**
 * What one reading of a page has and another lacks: paths of the same kind, corner on corner within `within` points, seen through the
 * same window. Each path is used once, so that what is drawn twice has to be there twice.
 */
export function missingFrom(page: DrawnPage, wanted: DrawnPage, within: number): readonly DrawnPath[] {
  const left = new Set(page.paths.filter(isStroked));
  return wanted.paths.filter(isStroked).filter((path) => {
    for (const other of left)
      if (isSame(path, other, within)) {
        left.delete(other);
        return false;
      }
    return true;
  });
}

const isStroked = ({ stroked }: DrawnPath): boolean => stroked;

/** Points by which widths of strokes may differ. */
const WIDTH_WITHIN = 0.01;

function isSame(p: DrawnPath, q: DrawnPath, within: number): boolean {
  return (
    p.closed === q.closed &&
    p.dashed === q.dashed &&
    Math.abs(p.width - q.width) <= WIDTH_WITHIN &&
    apart(p.points, q.points, p.closed) <= within &&
    isSameWindow(p.window, q.window, within)
  );
}

/** The greatest distance between corners; a closed path may be walked from any corner, and both ways. */
function apart(p: readonly Spot[], q: readonly Spot[], closed: boolean): number {
  if (p.length !== q.length) return Infinity;
  let least = Infinity;
  for (const ring of [q, [...q].reverse()])
    for (let first = 0; first < (closed ? ring.length : 1); first++) {
      const far = p.map(({ x, y }, i) => {
        const other = ring[(i + first) % ring.length]!;
        return Math.hypot(x - other.x, y - other.y);
      });
      least = Math.min(least, Math.max(...far));
    }
  return least;
}

const isSameWindow = (p: DrawnPath['window'], q: DrawnPath['window'], within: number): boolean =>
  p === null || q === null ? p === q : p.every((side, i) => Math.abs(side - q[i]!) <= within);
