import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import { deleteParts, linesEndingIn, withImages } from '@seamwright/drafting';
import { Move, Trash2 } from 'lucide-react';
import { selectNothing } from '../../../store/selection.ts';
import { Button } from '../../../ui/button.tsx';
import { listed } from '../../../ui/plural.ts';
import { carryPoint } from '../crosshair.ts';
import { currentSymmetry } from '../hand.ts';
import { namesOf } from '../names.ts';
import { EditButton } from './edit-button.tsx';
import { movePointTo } from './move-point-to.ts';
import styles from './panel.module.css';
import { PlaceFields } from './place-fields.tsx';
import { PointLines } from './point-lines.tsx';
import { PointSlide } from './point-slide.tsx';

interface PointPanelProps {
  readonly id: PointId;
  readonly drawing: Drawing;
  /** The drawing without what a drag is about to make of it. */
  readonly own: Drawing;
}

/** The point in hand: its exact place, and what can be done with it. */
export function PointPanel({ id, drawing, own }: PointPanelProps) {
  const point = drawing.points[id]!;
  const isCorner = drawing.outline.includes(id);
  const names = namesOf(drawing);
  const named = (lines: readonly LineId[]) =>
    listed(lines.map((line) => names.lines.get(line)?.toLowerCase() ?? ''));
  const lines = linesEndingIn(drawing, id).map((line) => line.id);
  const on = point.on ?? [];
  const only = { points: [id], lines: [] };
  return (
    <>
      <div className={styles.part}>
        <h2>{names.points.get(id)}</h2>
        <PlaceFields at={point} onChange={(at) => movePointTo(id, at)} />
        <p className={styles.hint}>
          {isCorner ? 'Corner of the outline.' : `End of ${named(lines)}.`}
          {on.length > 0 && ` On ${named(on)}: it stays there when that moves.`}
        </p>
        <div className={styles.row}>
          <Button
            icon={Move} // A key's click counts no presses.
            onClick={(event) => carryPoint(point, event.detail === 0)}
          >
            Move it
          </Button>
          <EditButton
            step={isCorner ? 'Remove a corner' : 'Delete a point'}
            icon={Trash2}
            edit={(before) => deleteParts(before, withImages(before, only, currentSymmetry()))}
            then={selectNothing}
          >
            {isCorner ? 'Remove corner' : 'Delete with its lines'}
          </EditButton>
        </div>
      </div>
      {own.points[id] !== undefined && (
        <>
          <PointLines id={id} drawing={own} />
          <PointSlide id={id} drawing={own} />
        </>
      )}
    </>
  );
}
