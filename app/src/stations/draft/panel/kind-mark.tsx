import type { SnapKind } from '@seamwright/drafting';
import { MARK, SNAP_SHAPES } from '../layers/snap-shapes.ts';

const PAD = 3;
const SIZE = 2 * (MARK + PAD);

/** The mark of a kind of place, as it is on the drawing. */
export function KindMark({ kind }: { readonly kind: SnapKind }) {
  const { strokes, closed = false, ring } = SNAP_SHAPES[kind];
  return (
    <svg
      width={SIZE}
      height={SIZE}
      viewBox={`${-SIZE / 2} ${-SIZE / 2} ${SIZE} ${SIZE}`}
      fill="none"
      stroke="var(--accent)"
      strokeWidth={2}
      strokeLinejoin="round"
      aria-hidden="true"
    >
      {ring !== undefined && <circle r={ring} />}
      {strokes.map((points) =>
        closed && points.length > 4 ? (
          <polygon key={points.join()} points={points.join()} />
        ) : (
          <polyline key={points.join()} points={points.join()} />
        ),
      )}
    </svg>
  );
}
