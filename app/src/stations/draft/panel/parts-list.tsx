import type { Drawing } from '@seamwright/arrangement';
import { drawnLines } from '@seamwright/drafting';
import { distance, type LengthUnit, type Point } from '@seamwright/geometry';
import { type KeyboardEvent, useState } from 'react';
import { select } from '../../../store/selection.ts';
import { currentBlock, type Selection, useWork } from '../../../store/work.ts';
import { counted } from '../../../ui/plural.ts';
import { rove } from '../../../ui/roving.ts';
import { lengthWords, originOf, placeWords } from '../measures.ts';
import { namesOf } from '../names.ts';
import { NewLine } from './new-line.tsx';
import styles from './panel.module.css';

/** Everything on the canvas as lists: to read, to choose from, and to draw by typing. */
export function PartsList() {
  const [open, setOpen] = useState(false);
  const drawing = useWork((work) => currentBlock(work).drawing);
  return (
    <details className={styles.part} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        Everything drawn, as a list{' '}
        <span className={styles.quiet}>{counted(drawing.splits.length, 'line')}</span>
      </summary>
      {open && <Lists drawing={drawing} />}
    </details>
  );
}

function Lists({ drawing }: { readonly drawing: Drawing }) {
  const unit = useWork((work) => work.history.present.unit);
  const names = namesOf(drawing);
  const origin = originOf(drawing);
  const lines = [...drawnLines(drawing).values()];
  return (
    <div className={styles.lists}>
      <NewLine />
      <StopList
        heading="Lines"
        stops={lines.map(({ id, from, to }) => ({
          id,
          name: names.lines.get(id)!,
          words: lengthWords(distance(from, to), unit),
          selection: { lines: [id] },
        }))}
      />
      <StopList
        heading="Points"
        stops={[...names.points].map(([id, name]) => ({
          id,
          name,
          words: placeWords(drawing.points[id]!, origin, unit),
          selection: { points: [id] },
        }))}
      />
      <PatchList unit={unit} origin={origin} />
    </div>
  );
}

function PatchList({ unit, origin }: { readonly unit: LengthUnit; readonly origin: Point }) {
  const study = useWork((work) => work.study);
  const records = useWork((work) => currentBlock(work).patches);
  const patches = study?.arrangement?.patches ?? [];
  if (study === null || patches.length === 0) return null;
  return (
    <StopList
      heading="Patches"
      stops={patches.map((patch) => {
        const id = study.records[patch.index]!.id;
        const note = records.find((record) => record.id === id)?.note ?? '';
        const place = placeWords(patch.heart, origin, unit);
        return {
          id,
          name: study.names[patch.index]!,
          words: note === '' ? `round ${place}` : note,
          selection: { patches: [id] },
        };
      })}
    />
  );
}

interface Stop {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly selection: Partial<Selection>;
}

/** One stop of the Tab key; arrows go through the list. */
function StopList({ heading, stops }: { readonly heading: string; readonly stops: readonly Stop[] }) {
  const selection = useWork((work) => work.selection);
  const chosen = [...selection.points, ...selection.lines, ...selection.patches][0];
  const first = stops.some(({ id }) => id === chosen) ? chosen : stops[0]?.id;
  return (
    <section>
      <h3>{heading}</h3>
      <ul aria-label={heading} onKeyDown={(event: KeyboardEvent<HTMLElement>) => rove(event)}>
        {stops.map(({ id, name, words, selection: these }) => (
          <li key={id}>
            <button
              type="button"
              data-stop
              tabIndex={id === first ? 0 : -1}
              className={styles.stop}
              aria-pressed={id === chosen}
              onClick={() => select(these)}
            >
              <span>{name}</span>
              <span className={styles.quiet}>{words}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
