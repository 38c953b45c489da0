import type { Drawing } from '@seamwright/arrangement';
import { addCorner, type DrawnLine, deleteSplit } from '@seamwright/drafting';
import { distance, midpoint } from '@seamwright/geometry';
import { SplinePointer, Trash2 } from 'lucide-react';
import { change } from '../../../store/changes.ts';
import { select, selectNothing } from '../../../store/selection.ts';
import { useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { choose } from '../chosen.ts';
import { lengthWords, originOf, placeWords } from '../measures.ts';
import { namesOf } from '../names.ts';
import styles from './panel.module.css';

/** The line in hand: its length and ends, and what can be done with it. */
export function LinePanel({ line, drawing }: { readonly line: DrawnLine; readonly drawing: Drawing }) {
  const unit = useWork((work) => work.history.present.unit);
  const names = namesOf(drawing);
  const origin = originOf(drawing);
  const remove = () => {
    if (change('Delete a line', (before) => deleteSplit(before, line.id)).ok) selectNothing();
  };
  const divide = () => {
    const result = change('Add a corner', (before) =>
      addCorner(before, line.id, midpoint(line.from, line.to)),
    );
    if (!result.ok) return;
    const at = drawing.outline.indexOf(line.from.id);
    select({ points: [result.value.outline[at + 1]!] });
  };
  return (
    <section className={styles.part} aria-label="In hand">
      <h2>
        {names.lines.get(line.id)}{' '}
        <span className={styles.quiet}>{lengthWords(distance(line.from, line.to), unit)}</span>
      </h2>
      <ul className={styles.ends}>
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
        {line.kind === 'edge' ? (
          <Button icon={SplinePointer} onClick={divide}>
            Add a corner to it
          </Button>
        ) : (
          <Button icon={Trash2} onClick={remove}>
            Delete line
          </Button>
        )}
      </div>
    </section>
  );
}
