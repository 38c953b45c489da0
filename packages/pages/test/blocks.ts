import { type Arrangement, arrange, drawingFromSegments } from '@seamwright/arrangement';
import { type Point, sentence } from '@seamwright/geometry';
import { type PlanOptions, planSewing, type SewingPlan } from '@seamwright/sewing';
import { BOAT, JIB, type Line, type Pair, PIER, rectangle } from '../../../e2e/support/shapes.ts';
import type { FoundationJob } from '../src/index.ts';

export { type Line, rectangle } from '../../../e2e/support/shapes.ts';

/** A block and how it is sewn. */
export interface Block {
  readonly arrangement: Arrangement;
  readonly plan: SewingPlan;
}

/** A block from its corners and its splits (x1, y1, x2, y2), inches, sewn as `wishes` say. */
export function block(outline: readonly Pair[], splits: readonly Line[], wishes?: PlanOptions): Block {
  const corners = outline.map(([x, y]): Point => ({ x, y }));
  const segments = splits.map(([x1, y1, x2, y2]) => ({ a: { x: x1, y: y1 }, b: { x: x2, y: y2 } }));
  const arrangement = arrange(drawingFromSegments(corners, segments));
  if (!arrangement.ok) throw new Error(sentence(arrangement.problem));
  return { arrangement: arrangement.value, plan: planSewing(arrangement.value, wishes) };
}

/** A house on the quay: five patches, one foundation, no symmetry left to right but that of its outline. */
export const house = (): Block =>
  block(
    [
      [0, 3],
      [3, 0],
      [6, 3],
      [6, 7],
      [0, 7],
    ],
    [
      [0, 3, 6, 3],
      [0, 4.5, 6, 4.5],
      [2.25, 4.5, 2.25, 7],
      [3.25, 4.5, 3.25, 7],
    ],
  );

/** The lantern: a square in a square, every seam ends in the middle of an edge. */
export const lantern = (side: number): Block => {
  const half = side / 2;
  return block(rectangle(side, side), [
    [half, 0, side, half],
    [side, half, half, side],
    [half, side, 0, half],
    [0, half, half, 0],
  ]);
};

/** Eight patches, two foundations: the seams of each end on the other's edge. */
export const pinwheel = (side: number): Block => {
  const half = side / 2;
  return block(rectangle(side, side), [
    [half, 0, half, side],
    [0, half, side, half],
    [0, 0, side, side],
    [side, 0, 0, side],
  ]);
};

/** The same shapes as the pieces are cut for; see there what is awkward about them. */
export const jib = (): Block => block(JIB.outline, JIB.splits);
export const pier = (): Block => block(PIER.outline, PIER.splits);
export const boat = (): Block => block(BOAT.outline, BOAT.splits);

/** A strip of nine inches, like nothing when it is mirrored or turned. */
export const wharf = (): Block =>
  block(rectangle(9, 3), [
    [2, 0, 3, 3],
    [5, 0, 5, 3],
    [5, 1, 9, 2],
  ]);

/** What is unusual about a job; `copies` and `scale` are those of its only size. */
export type Unusual = Partial<FoundationJob> & { readonly copies?: number; readonly scale?: number };

/** A job with everything usual: a quarter inch, Letter, one block, as drawn. */
export const usual = (
  of: Block,
  title: string,
  { copies = 1, scale = 1, ...more }: Unusual = {},
): FoundationJob => ({
  title,
  arrangement: of.arrangement,
  plan: of.plan,
  paper: 'letter',
  sizes: [{ copies, scale }],
  ...more,
});

/** Four oblongs round a square: one partial seam, five foundations. */
export const windmill = (side: number): Block =>
  ringOfFour({ width: side, height: side, xs: [side / 3, (2 * side) / 3], ys: [side / 3, (2 * side) / 3] });

/** Four seams that chase each other round an oblong between `xs` and `ys`, with partial seams allowed. */
export const ringOfFour = (ring: {
  readonly width: number;
  readonly height: number;
  readonly xs: Pair;
  readonly ys: Pair;
}): Block => {
  const { width, height } = ring;
  const [[left, right], [top, bottom]] = [ring.xs, ring.ys];
  return block(
    rectangle(width, height),
    [
      [left, 0, left, bottom],
      [0, bottom, right, bottom],
      [right, top, right, height],
      [left, top, width, top],
    ],
    { partialSeams: true },
  );
};

/** A lamp whose arms lean: four seams that chase each other, none of them level or upright. */
export const turningLamp = (): Block =>
  block(
    rectangle(8, 8),
    [
      [3, 0, 3.384, 4.794],
      [0, 5.2, 4.795, 4.625],
      [5.2, 8, 4.626, 3.213],
      [8, 2.8, 3.27, 3.379],
    ],
    { partialSeams: true },
  );
