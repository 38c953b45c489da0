import { type KeyboardEvent, useMemo } from 'react';
import { select, togglePatch } from '../../../store/selection.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { patchesByName } from '../../../study/by-name.ts';
import { originOf, placeWords } from '../../../ui/measures.ts';
import { rove } from '../../../ui/roving.ts';
import styles from './panel.module.css';

/** The patches: one stop of the Tab key; arrows go through the list. */
export function PatchList() {
  const study = useWork((work) => work.study);
  const unit = useWork((work) => work.history.present.unit);
  const records = useWork((work) => currentBlock(work).patches);
  const inHand = useWork((work) => work.selection.patches);
  const [chosen] = inHand;
  const patches = useMemo(() => (study === null ? [] : patchesByName(study)), [study]);
  if (study === null || patches.length === 0) return null;
  const origin = originOf(study.drawing);
  const ids = patches.map(({ index }) => study.records[index]!.id);
  const stop = chosen !== undefined && ids.includes(chosen) ? chosen : ids[0];
  const notes = new Map(records.map(({ id, note }) => [id, note]));
  return (
    <section>
      <h3>Patches</h3>
      <ul aria-label="Patches" onKeyDown={(event: KeyboardEvent<HTMLElement>) => rove(event)}>
        {patches.map(({ index, heart }, i) => {
          const id = ids[i]!;
          const note = notes.get(id) ?? '';
          return (
            <li key={id}>
              <button
                type="button"
                data-stop
                tabIndex={id === stop ? 0 : -1}
                className={styles.stop}
                aria-pressed={inHand.includes(id)}
                onClick={({ shiftKey }) => (shiftKey ? togglePatch(id) : select({ patches: [id] }))}
              >
                <span>{study.names[index]}</span>
                <span className={styles.quiet}>
                  {note === '' ? `round ${placeWords(heart, origin, unit)}` : note}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
