/**
 * The only home of tolerances. Each has a name, a unit, why it is as large as it is, and what goes wrong when
 * it is larger or smaller. No other file holds a bare small number that decides about geometry, but for the checker in
 * `sewing/src/replay.ts`: it takes nothing from what it checks, so that a change here is noticed there.
 */

/**
 * Inches. An end drawn within this distance of another end, a corner or a line is taken to be on it.
 *
 * 1/64 in is what hand-drawn files are off by, and less than a needle's width, so no sewable shape is lost.
 * Larger would swallow real details (a 1/32 in sliver is at least seen and reported); smaller would leave
 * hand-drawn files full of loose ends.
 */
export const SNAP_DISTANCE = 1 / 64;

/**
 * Inches. A seam is straight for the sewer when no point of it is farther than this from one line; so splits
 * that fit one line within it are one line, and a crossing within it of a third line lies on that line too.
 *
 * 1/128 in (0.2 mm) is the width of a printed line. Larger would call bent seams straight; smaller would refuse
 * seams that no one could sew more exactly.
 */
export const STRAIGHT_WITHIN = 1 / 128;

/**
 * Inches. Coordinates that differ by less are the same number written twice.
 *
 * Far above the rounding of doubles at 120 in (1.4e-14) and of six-decimal files (5e-7); far below anything
 * that can be printed. Larger would hide differences that findings should tell of; smaller would report
 * the sixth decimal of a drawing program as imprecise drawing.
 */
export const SAME_COORDINATE = 1e-6;

/** Inches. The largest finished side of a block; beyond it the number was almost surely meant in another unit. */
export const LARGEST_SIZE = 120;

/**
 * Inches. The largest coordinate of a drawing's point, to either side. Nothing is drawn farther out.
 *
 * It is far above {@link LARGEST_SIZE}: parts beyond the outline are cut off anyway. Larger, up to 1e300, could not be reckoned
 * with; smaller would refuse drawings whose lines run far past the block.
 */
export const FARTHEST_POINT = 10_000;

/**
 * Inches. How much deeper inside a patch a label could have stood than where we put it.
 *
 * 1/256 in (0.1 mm) is not seen. Larger would push labels visibly off the middle; smaller costs time on every
 * edit for every patch, and is within half a printed line.
 */
export const DEEPEST_WITHIN = 1 / 256;

/**
 * No unit: perimeter² ÷ area, 16 for a square. A shape beyond it is a sliver (a strip 2,500 times as long as
 * wide, such as 6 in × 1/400 in): no label fits, and any good point inside will do.
 *
 * Larger would let one sliver of a careless drawing take the search millions of steps; smaller would put the
 * labels of real, narrow strips off their middle.
 */
export const SLIVER_RATIO = 10_000;

/** Inches. The smallest finished side: below it, four snap distances, the parts of a block snap to one another. */
export const SMALLEST_SIZE = 1 / 16;

/** Inches. The largest seam allowance; beyond it the number was almost surely meant in another unit. */
export const LARGEST_ALLOWANCE = 2;

/**
 * No unit: in allowances. The tip of a mitre is cut square across where it would be farther than this from the
 * corner of the sew line; so it is for corners below 2·asin(1/3) = 38.9°.
 *
 * 3 leaves the 45° corners of half-square triangles and diamonds whole (their tips are 2.61 allowances off), to
 * which the trade's cutting sizes are measured. Larger would print long tips of paper that hold no seam (at 1°,
 * 29 in for a quarter inch); smaller would shorten corners by which pieces are lined up, and below 1 the
 * allowance itself would be cut.
 */
export const MITRE_REACH = 3;

/**
 * Decimals of an inch. The grid on which overlapping strips of a concave outline's allowance are united.
 *
 * At 8 the whole numbers for a block of 120 in stay below 2^34, far from where the library's arithmetic ends.
 * Fewer decimals give visible errors in congruence checks; more buy nothing on paper.
 */
export const OUTLINE_DECIMALS = 8;

/**
 * Inches. How far a corner that was computed on that grid may lie from where it should: ten steps of the grid.
 *
 * A tenth of {@link SAME_COORDINATE}, so that it is never taken for a difference. Larger would move corners that
 * are meant; smaller would leave corners in the middle of straight edges.
 */
export const OUTLINE_ROUNDING = 1e-7;

/**
 * Inches. Seams that stop on either side of a line, or go on from each other, no farther apart than this were probably
 * meant to be one straight line.
 *
 * 1/8 in is half a seam allowance: the eye takes a step of that size for a slip. Larger would suspect steps that are
 * drawn on purpose; smaller would let slips pass that show on the finished block.
 */
export const LINE_UP_DISTANCE = 1 / 8;

/**
 * Degrees. Seams whose directions differ by no more than this were probably meant to be one straight line.
 *
 * At 3° a seam of 2.4 in leaves the straight line by 1/8 in, as much as {@link LINE_UP_DISTANCE}. Larger would suspect the bends of
 * a curve drawn in short seams (24 to a circle bend by 15°); smaller would let long seams that miss each other pass.
 */
export const LINE_UP_ANGLE = 3;

/**
 * Inches. Lengths of cut pieces are added up in whole steps of this, so that whether they fit a strip is exact.
 *
 * Sixty-fourths of an inch are 127 steps and millimetres 320, so every size that is cut is a whole number of them.
 * Larger would round sizes of one of the two units; smaller would only make the sums longer.
 */
export const CUTTING_GRID = 1 / 8128;

/**
 * No unit: relative. What the solver of linear programs computes may be off by so much; bounds are lowered by it before
 * they are rounded up to whole steps of {@link CUTTING_GRID}.
 *
 * It is above the solver's own tolerance of 1e-7. Larger would give away proofs: of 800,000 steps (100 in of fabric) it
 * lowers a bound by one, which is less than any cut; smaller would call rounding a proof.
 */
export const SOLVER_ROUNDING = 1e-6;

/**
 * Points. So much nearer than the gap, and its own like added to it, two foundations on a sheet count as apart.
 *
 * Sums of a page's lengths are rounded in the thirteenth digit. Larger would take room from sheets; smaller would refuse places
 * where one foundation just touches the gap of another, which are the ones looked for.
 */
export const PACKING_ROUNDING = 0.001;

/**
 * Points by which the cells of a sheet's grid make foundations smaller, so that no rounding ever rules a free place out.
 *
 * Well above {@link PACKING_ROUNDING} on both sides. Larger would look at more places in vain; smaller could lose one.
 */
export const CELL_MARGIN = 0.02;

/**
 * Points. A label that is moved off a line is moved so much farther.
 *
 * 3.5 µm on paper, which no printer shows. Smaller, rounding could leave it on the line; larger would be a gap that nobody asked for.
 */
export const CLEAR_OF_LINE = 0.01;
