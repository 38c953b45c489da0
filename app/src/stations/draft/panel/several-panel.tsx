import type { Drawing } from '@seamwright/arrangement';
import { deleteParts, joinableWith, joinSplits, type Parts, withImages } from '@seamwright/drafting';
import { Spline, Trash2 } from 'lucide-react';
import { select, selectNothing } from '../../../store/selection.ts';
import { counted, listed } from '../../../ui/plural.ts';
import { currentSymmetry } from '../hand.ts';
import { EditButton } from './edit-button.tsx';
import styles from './panel.module.css';
import { TransformFields } from './transform-fields.tsx';

interface SeveralPanelProps extends Parts {
  readonly drawing: Drawing;
}

/** Several points and lines in hand: what is done to them together. */
export function SeveralPanel({ points, lines, drawing }: SeveralPanelProps) {
  const counts = [
    ...(lines.length > 0 ? [counted(lines.length, 'line')] : []),
    ...(points.length > 0 ? [counted(points.length, 'point')] : []),
  ];
  const parts = { points, lines };
  const [one, other, third] = lines;
  const joinable =
    one !== undefined &&
    other !== undefined &&
    third === undefined &&
    points.length === 0 &&
    joinableWith(drawing, one).includes(other);
  return (
    <div className={styles.part}>
      <h2>{listed(counts)}</h2>
      <div className={styles.row}>
        {joinable && (
          <EditButton
            step="Join two lines"
            icon={Spline}
            edit={(before) => joinSplits(before, one, other)}
            then={() => select({ lines: [one] })}
          >
            Join them
          </EditButton>
        )}
        <EditButton
          step="Delete several things"
          icon={Trash2}
          edit={(before) => deleteParts(before, withImages(before, parts, currentSymmetry()))}
          then={selectNothing}
        >
          Delete them
        </EditButton>
      </div>
      <TransformFields parts={parts} drawing={drawing} />
    </div>
  );
}
