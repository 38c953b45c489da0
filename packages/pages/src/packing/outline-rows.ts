import { edgesOf, type Polygon } from '@seamwright/geometry';

/**
 * Points: how high a row is. In rows the packing sees shapes; half of it is lost between two neighbours on average
 * (0.7 mm), and a search takes four times as long when it is halved.
 */
export const ROW = 4;

/** Points: what sums of numbers in another order may differ by. */
const ROUNDING = 0.001;

/** What a shape and the paper that must stay free round it cover of rows of the sheet, each from `from` to `to`. */
export interface Rows {
  /** Points; from the left edge of the shape's upright rectangle. Row 0 begins `reach` above that rectangle. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** The length of the longest of them, a little less for rounding, and which it is. */
  readonly widest: number;
  readonly widestAt: number;
}

/**
 * The rows that a shape covers with everything nearer to it than `reach`: for each row the least and the greatest x
 * of a point that lies in the row and is within `reach` of one of the polygons.
 *
 * Hollows that open to the left or right count as covered, as does what lies between two polygons in one row. So two
 * shapes whose rows do not overlap are at least twice `reach` apart; the reverse need not hold.
 *
 * @param polygons points; their common upright rectangle begins at (0, 0) and is `height` high
 */
export function rowsOf(polygons: readonly Polygon<'page'>[], height: number, reach: number): Rows {
  const count = Math.ceil((height + 2 * reach) / ROW);
  const from = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const to = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  const cover = (row: number, left: number, right: number) => {
    if (left < from[row]!) from[row] = left;
    if (right > to[row]!) to[row] = right;
  };
  const coverRows = (top: number, bottom: number, put: (row: number, y0: number, y1: number) => void) => {
    const last = Math.min(count - 1, Math.floor((bottom + reach) / ROW));
    for (let row = Math.max(0, Math.floor((top + reach) / ROW)); row <= last; row++)
      put(row, row * ROW - reach, (row + 1) * ROW - reach);
  };
  // Within `reach` of an edge is what lies within it of the ends, and between the two lines beside the edge.
  for (const { a, b } of polygons.flatMap(edgesOf)) {
    coverRows(a.y - reach, a.y + reach, (row, y0, y1) => {
      const off = a.y < y0 ? y0 - a.y : a.y > y1 ? a.y - y1 : 0;
      const half = Math.sqrt(Math.max(0, reach * reach - off * off));
      cover(row, a.x - half, a.x + half);
    });
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    if (long === 0) continue;
    const [dx, dy] = [((b.y - a.y) / long) * reach, ((a.x - b.x) / long) * reach];
    for (const side of [1, -1]) {
      const p = { x: a.x + side * dx, y: a.y + side * dy };
      const q = { x: b.x + side * dx, y: b.y + side * dy };
      const [top, bottom] = p.y < q.y ? [p, q] : [q, p];
      const slope = top.y === bottom.y ? 0 : (bottom.x - top.x) / (bottom.y - top.y);
      coverRows(top.y, bottom.y, (row, y0, y1) => {
        const level = top.y === bottom.y;
        const x0 = level ? top.x : top.x + (Math.max(top.y, y0) - top.y) * slope;
        const x1 = level ? bottom.x : top.x + (Math.min(bottom.y, y1) - top.y) * slope;
        cover(row, Math.min(x0, x1), Math.max(x0, x1));
      });
    }
  }
  const lengths = from.map((start, row) => to[row]! - start);
  const widest = Math.max(...lengths);
  return { from, to, widest: widest - ROUNDING, widestAt: lengths.indexOf(widest) };
}
