import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import {
  deletePoint,
  followersOf,
  linesEndingIn,
  movePoint,
  placeExactly,
  snapScene,
} from '@seamwright/drafting';
import type { Point } from '@seamwright/geometry';
import { Move, Trash2 } from 'lucide-react';
import { change } from '../../../store/changes.ts';
import { selectNothing } from '../../../store/selection.ts';
import { Button } from '../../../ui/button.tsx';
import { listed } from '../../../ui/plural.ts';
import { carryPoint } from '../crosshair.ts';
import { namesOf } from '../names.ts';
import styles from './panel.module.css';
import { PlaceFields } from './place-fields.tsx';

/** The point in hand: its exact place, and what can be done with it. */
export function PointPanel({ id, drawing }: { readonly id: PointId; readonly drawing: Drawing }) {
  const point = drawing.points[id]!;
  const isCorner = drawing.outline.includes(id);
  const names = namesOf(drawing);
  const named = (lines: readonly LineId[]) =>
    listed(lines.map((line) => names.lines.get(line)?.toLowerCase() ?? ''));
  const lines = linesEndingIn(drawing, id).map((line) => line.id);
  const moveTo = (at: Point) => {
    const result = change(isCorner ? 'Move a corner' : 'Move a point', (before) =>
      movePoint(before, id, placeExactly(at, snapScene(before, followersOf(before, id)))),
    );
    // The point may have become one with the point that was there.
    if (result.ok && result.value.points[id] === undefined) selectNothing();
  };
  const remove = () => {
    if (change(isCorner ? 'Remove a corner' : 'Delete a point', (before) => deletePoint(before, id)).ok)
      selectNothing();
  };
  const on = point.on ?? [];
  return (
    <section className={styles.part} aria-label="In hand">
      <h2>{names.points.get(id)}</h2>
      <PlaceFields key={`${point.x} ${point.y}`} at={point} onChange={moveTo} />
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
        <Button icon={Trash2} onClick={remove}>
          {isCorner ? 'Remove corner' : 'Delete with its lines'}
        </Button>
      </div>
    </section>
  );
}
