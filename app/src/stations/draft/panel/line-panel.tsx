import type { Drawing } from '@seamwright/arrangement';
import { addCorner, type DrawnLine, deleteParts, withImages } from '@seamwright/drafting';
import { distance, midpoint } from '@seamwright/geometry';
import { SplinePointer, Trash2 } from 'lucide-react';
import { select, selectNothing } from '../../../store/selection.ts';
import { useWork } from '../../../store/work.ts';
import { lengthWords, originOf, placeWords } from '../../../ui/measures.ts';
import { choose } from '../chosen.ts';
import { currentSymmetry } from '../hand.ts';
import { namesOf } from '../names.ts';
import { EditButton } from './edit-button.tsx';
import { LineMeasure } from './line-measure.tsx';
import { LineWalk } from './line-walk.tsx';
import styles from './panel.module.css';
import { ParallelPart } from './parallel-part.tsx';
import { TransformPart } from './transform-part.tsx';

interface LinePanelProps {
  readonly line: DrawnLine;
  readonly drawing: Drawing;
  /** The drawing without what a drag is about to make of it. */
  readonly own: Drawing;
}

/** The line in hand: its measures and ends, and what can be done with it. */
export function LinePanel({ line, drawing, own }: LinePanelProps) {
  const unit = useWork((work) => work.history.present.unit);
  const names = namesOf(drawing);
  const origin = originOf(drawing);
  const long = lengthWords(distance(line.from, line.to), unit);
  const isEdge = line.kind === 'edge';
  const only = { points: [], lines: [line.id] };
  return (
    <>
      <div className={styles.part}>
        <h2>
          {names.lines.get(line.id)}
          {/* As one reads it off a ruler, where the field has to be more exact. */}
          {long.startsWith('about') && <span className={styles.quiet}>{long}</span>}
        </h2>
        <LineMeasure line={line} drawing={drawing} />
        <ul className={styles.ends} aria-label="Its ends">
          {[line.from, line.to].map((end) => (
            <li key={end.id}>
              <button
                type="button"
                className={styles.stop}
                onClick={() => choose({ kind: 'point', id: end.id })}
              >
                <span>{names.points.get(end.id)}</span>
                <span className={styles.quiet}>{placeWords(end, origin, unit)}</span>
              </button>
            </li>
          ))}
        </ul>
        <div className={styles.row}>
          {isEdge ? (
            <EditButton
              step="Add a corner"
              icon={SplinePointer}
              edit={(before) => addCorner(before, line.id, midpoint(line.from, line.to))}
              then={({ outline }) => select({ points: [outline[outline.indexOf(line.from.id) + 1]!] })}
            >
              Add a corner to it
            </EditButton>
          ) : (
            <EditButton
              step="Delete a line"
              icon={Trash2}
              edit={(before) => deleteParts(before, withImages(before, only, currentSymmetry()))}
              then={selectNothing}
            >
              Delete line
            </EditButton>
          )}
        </div>
      </div>
      {!isEdge && <LineWalk id={line.id} drawing={own} />}
      <ParallelPart id={line.id} drawing={own} />
      {!isEdge && <TransformPart points={NONE} lines={only.lines} drawing={own} />}
    </>
  );
}

const NONE: readonly string[] = [];
