import { Clipper, ClipType, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';
import { checkSimple } from './check-simple.ts';
import { fromPath, isSliver, tidied, toPath } from './grid.ts';
import { distanceToSegment } from './line.ts';
import type { Point, Polygon, Segment, Space } from './point.ts';
import { edgesOf, isClockwise, reversed, signedArea, withoutStraightCorners } from './polygon.ts';
import { turn } from './predicates.ts';
import { MITRE_REACH, OUTLINE_DECIMALS, OUTLINE_ROUNDING, SAME_COORDINATE } from './tolerance.ts';
import { add, dot, normalize, scale, subtract } from './vector.ts';

/** The cutting line round a finished outline. */
export interface AllowanceOutline<S extends Space = 'block'> {
  /** One simple polygon, clockwise on the screen, without corners on straight runs. */
  readonly outline: Polygon<S>;
  /** Those edges of the outline that cut a sharp tip off square. */
  readonly cuts: readonly Segment<S>[];
  /** Hollows that the allowance closed off all round, in a notch narrower at its mouth; they are filled. */
  readonly pockets: readonly Polygon<S>[];
}

/**
 * The outline with `allowance` (same unit as the polygon) added outside every edge of a simple polygon.
 *
 * Edges move outward by exactly the allowance and meet in mitres, as the edge of a ruler laid along the cutting
 * lines would: that is what the trade's cutting constants measure. Where a mitre's tip would be farther than
 * {@link MITRE_REACH} allowances from its corner, it is cut square across at that distance; the rule is
 * continuous, no tip jumps when an angle changes. No point of the result is nearer to the polygon than the
 * allowance, and outside the mitres none is farther.
 *
 * Concave polygons: the result is the outer boundary of the polygon, a strip of the allowance's width along each
 * edge, and the mitres, taken together. A notch narrower than two allowances closes up. What it leaves hollow
 * inside is filled, as scissors cannot get there, and listed in `pockets`; a slit narrower than
 * {@link SAME_COORDINATE} counts as closed.
 *
 * Exactness: closed form for convex polygons. For concave ones the corners that are mitres of neighbouring edges
 * are the closed form's too, corners where a notch closed up are within {@link OUTLINE_ROUNDING}.
 *
 * The polygon must be simple ({@link checkSimple}), either way round. An allowance of 0 gives back the polygon as
 * it is. Throws a RangeError on an allowance that is negative or no finite number.
 *
 * Closed form: each corner moves along its bisector (plane geometry). Union of the overlapping parts: B. R. Vatti,
 * A generic solution to polygon clipping, Communications of the ACM 35(7), 1992, as in the library clipper2-ts.
 */
export function allowanceOutline<S extends Space = 'block'>(
  polygon: Polygon<S>,
  allowance: number,
): AllowanceOutline<S> {
  if (!(allowance >= 0 && Number.isFinite(allowance)))
    throw new RangeError(`No allowance is ${allowance} wide`);
  if (allowance === 0) return { outline: polygon, cuts: [], pockets: [] };

  const sewLine = withoutStraightCorners(isClockwise(polygon) ? polygon : reversed(polygon));
  const corners = movedCorners(sewLine, allowance);
  const cuts = corners.flatMap(({ moved: [a, b] }) => (a === undefined || b === undefined ? [] : [{ a, b }]));
  if (corners.every(({ reflex }) => !reflex))
    return { outline: corners.flatMap(({ moved }) => moved), cuts, pockets: [] };

  const trueCorners = corners.flatMap(({ moved }) => moved);
  const { outer, hollows } = boundaryOf(corners.flatMap(({ walk }) => walk));
  const outline = tidied(outer, trueCorners);
  return {
    outline,
    cuts: edgesOf(outline).filter(({ a, b }) => cuts.some((cut) => liesOn(a, cut) && liesOn(b, cut))),
    pockets: hollows.map((hollow) => tidied(hollow, trueCorners)),
  };
}

/** What becomes of one corner of the sew line. */
interface MovedCorner<S extends Space> {
  readonly reflex: boolean;
  /** The corner of the outline that it turns into: the mitre, or the two ends of the cut across its tip. */
  readonly moved: readonly Point<S>[];
  /** The stretch that it adds to a walk round the polygon, strips and mitres, which may cross itself. */
  readonly walk: readonly Point<S>[];
}

function movedCorners<S extends Space>(sewLine: Polygon<S>, allowance: number): readonly MovedCorner<S>[] {
  const count = sewLine.length;
  return sewLine.map((corner, i): MovedCorner<S> => {
    const before = sewLine[(i + count - 1) % count]!;
    const after = sewLine[(i + 1) % count]!;
    const arriving = normalize(subtract(corner, before));
    const leaving = normalize(subtract(after, corner));
    // Clockwise with y down: outside is on the left hand.
    const out1: Point<S> = { x: arriving.y, y: -arriving.x };
    const out2: Point<S> = { x: leaving.y, y: -leaving.x };

    // Neighbours' mitre: corner + allowance · (out1 + out2) ÷ (1 + out1 · out2), at allowance · √(2 ÷ (1 + cos)).
    const cosPlusOne = 1 + dot(out1, out2);
    const mitre = add(corner, scale(add(out1, out2), allowance / cosPlusOne));
    if (turn(before, corner, after) < 0) {
      // A notch's inner corner. Each strip ends at the corner, square to its edge; the strips overlap there.
      const walk = [add(corner, scale(out1, allowance)), corner, add(corner, scale(out2, allowance))];
      return { reflex: true, moved: [mitre], walk };
    }
    if (2 <= MITRE_REACH * MITRE_REACH * cosPlusOne) return { reflex: false, moved: [mitre], walk: [mitre] };

    // arriving − leaving points out of the tip, and keeps its digits however sharp it is (out1 + out2 would not).
    const outward = normalize(subtract(arriving, leaving));
    const along = (allowance * (MITRE_REACH - dot(out1, outward))) / dot(arriving, outward);
    const ends = [
      add(corner, add(scale(out1, allowance), scale(arriving, along))),
      add(corner, subtract(scale(out2, allowance), scale(leaving, along))),
    ];
    return { reflex: false, moved: ends, walk: ends };
  });
}

/** The walk's outer boundary, slits closed, and the hollows inside it, all clockwise. */
function boundaryOf<S extends Space>(walk: Polygon<S>) {
  // Strips and mitres all run clockwise, so a place's winding number is the number of them that cover it.
  const pieces = Clipper.booleanOpD(
    ClipType.Union,
    [toPath(walk)],
    null,
    FillRule.Positive,
    OUTLINE_DECIMALS,
  );
  const found = outerAndHollows<S>(pieces);
  if (checkSimple(found.outer).ok) return found;
  return outerAndHollows<S>(resized(resized(pieces, SAME_COORDINATE), -SAME_COORDINATE));
}

/** Growing by a hair and shrinking again closes slits and leaves the rest where it is. */
const resized = (paths: PathsD, by: number): PathsD =>
  // The mitres of the outline reach no farther than those of a sew line, plus rounding.
  Clipper.inflatePathsD(paths, by, JoinType.Miter, EndType.Polygon, MITRE_REACH + 1, OUTLINE_DECIMALS);

function outerAndHollows<S extends Space>(paths: PathsD) {
  const rings = paths.map(fromPath<S>);
  const outer = rings.reduce((largest, ring) => (signedArea(ring) > signedArea(largest) ? ring : largest));
  const hollows = rings.filter((ring) => signedArea(ring) < 0 && !isSliver(ring)).map(reversed);
  return { outer, hollows };
}

const liesOn = <S extends Space>(p: Point<S>, { a, b }: Segment<S>): boolean =>
  distanceToSegment(p, a, b) <= OUTLINE_ROUNDING;
