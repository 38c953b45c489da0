import { distance } from '@seamwright/geometry';
import type { PinRecord } from '@seamwright/pattern';
import { useState } from 'react';
import { selectNothing } from '../../store/selection.ts';
import { addPins, removePins, samePin } from '../../store/wishes.ts';
import { currentWishes, useWork } from '../../store/work.ts';
import { neighboursOf } from '../../study/neighbours.ts';
import type { Study } from '../../study/study.ts';
import buttonStyles from '../../ui/button.module.css';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { listed } from '../../ui/plural.ts';
import { Popover } from '../../ui/popover.tsx';
import { roughLength } from '../../ui/rough-length.ts';
import { useShortcuts } from '../../ui/shortcuts.ts';
import styles from './in-hand.module.css';
import { patchLabel, patchOf } from './patch-label.ts';
import { type Candidate, PatchMenu } from './patch-menu.tsx';
import { pinStep } from './pin-words.ts';

const BAR = 'order-in-hand';

/** The patches in hand, and what can be asked of the order with them; at the foot of the panel, so that nothing moves. */
export function InHand({ study }: { readonly study: Study }) {
  const ids = useWork((work) => work.selection.patches);
  const patches = ids.map((id) => patchOf(study, id)).filter((patch) => patch >= 0);
  useShortcuts('At the Order station', [
    {
      keys: 'p',
      does: 'Pin what is in hand',
      run: () => document.querySelector<HTMLElement>(`#${BAR} button`)?.focus(),
      when: () => useWork.getState().selection.patches.length > 0,
    },
    {
      keys: 'Escape',
      does: 'Let go of what is in hand',
      run: selectNothing,
      // An open panel is what Escape closes first.
      when: () => document.querySelector(':popover-open') === null,
    },
  ]);
  const sewable = patches.every((patch) => study.sectionOf[patch]! >= 0);
  if (patches.length === 0 || !sewable) return null;
  return (
    <section id={BAR} className={styles.bar} aria-label="In hand">
      {patches.length === 1 ? (
        <OnePatch study={study} patch={patches[0]!} />
      ) : (
        <SeveralPatches study={study} patches={patches} />
      )}
    </section>
  );
}

/** Adds a pin, or takes the same one away again; the step's name is the pin's sentence. */
const addPin = (study: Study, ...pins: PinRecord[]): void =>
  addPins(`Pin: ${pinStep(pins[0]!, study)}`, pins);

interface OnePatchProps {
  readonly study: Study;
  readonly patch: number;
}

function OnePatch({ study, patch }: OnePatchProps) {
  const id = study.records[patch]!.id;
  const first: PinRecord = { kind: 'first', patch: id };
  const pinned = useWork((work) => currentWishes(work).pins.some((pin) => samePin(pin, first)));
  const idOf = (other: number) => study.records[other]!.id;
  const neighbours = neighboursOf(study.arrangement!, patch);
  const unit = useWork((work) => work.history.present.unit);
  const beside = new Set(neighbours.map((one) => one.patch));
  const section = study.plan!.sections[study.sectionOf[patch]!];
  const mates = section?.order.filter((other) => other !== patch) ?? [];
  const all = study.plan!.sections.flatMap(({ order }) => order).filter((other) => other !== patch);
  const nearFirst = [...all.filter((p) => beside.has(p)), ...all.filter((p) => !beside.has(p))];
  const simple = (other: number): Candidate => ({ patch: other, words: '' });
  const along = neighbours.map(({ patch: other, seams }): Candidate => {
    const length = seams.reduce((sum, { a, b }) => sum + distance(a, b), 0);
    return { patch: other, words: `seam of ${roughLength(length, unit)}`, seams };
  });
  return (
    <>
      <h2 className={styles.name}>{patchLabel(study, patch)}</h2>
      <div className={styles.pins}>
        <Button
          className={styles.pin}
          aria-pressed={pinned}
          onClick={() => (pinned ? removePins('Remove a pin', [first]) : addPin(study, first))}
        >
          Sew first
        </Button>
        <PatchMenu
          button="Before…"
          label={`Sew ${study.names[patch]} before`}
          none="It is alone in its section."
          study={study}
          candidates={mates.map(simple)}
          onChoose={(other) => addPin(study, { kind: 'before', patch: id, than: idOf(other) })}
        />
        <PatchMenu
          button="Together with…"
          label={`Keep ${study.names[patch]} in one section with`}
          none="There is no other patch."
          study={study}
          candidates={nearFirst.map(simple)}
          onChoose={(other) => addPin(study, { kind: 'together', patches: [id, idOf(other)] })}
        />
        <PatchMenu
          button="New section at…"
          label={`Start a new section at the seam of ${study.names[patch]} with`}
          none="No other patch has a seam with it."
          study={study}
          candidates={along}
          onChoose={(other) => addPin(study, { kind: 'apart', patches: [id, idOf(other)] })}
        />
        <Popover
          button="Letter…"
          label="Letter of the section"
          buttonClass={`${buttonStyles.button} ${styles.pin}`}
        >
          {(close) => <LetterForm study={study} patch={patch} close={close} />}
        </Popover>
      </div>
    </>
  );
}

interface LetterFormProps extends OnePatchProps {
  readonly close: () => void;
}

function LetterForm({ study, patch, close }: LetterFormProps) {
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const commit = () => {
    const letter = typed.trim().toUpperCase();
    if (!/^[A-Z]{1,2}$/.test(letter)) {
      setProblem('Type one or two letters, from A to Z.');
      return;
    }
    addPin(study, { kind: 'letter', patch: study.records[patch]!.id, letter });
    close();
  };
  return (
    <form
      className={styles.letter}
      onSubmit={(event) => {
        event.preventDefault();
        commit();
      }}
    >
      <Field label={`Call the section of ${study.names[patch]}`} problem={problem}>
        {(control) => (
          <input
            {...control}
            data-first
            data-settled={typed === ''}
            value={typed}
            maxLength={4}
            autoComplete="off"
            autoCapitalize="characters"
            placeholder={study.plan!.sections[study.sectionOf[patch]!]?.letter}
            onChange={(event) => setTyped(event.target.value)}
          />
        )}
      </Field>
      <Button look="main" onClick={commit}>
        Pin the letter
      </Button>
    </form>
  );
}

function SeveralPatches({ study, patches }: { readonly study: Study; readonly patches: readonly number[] }) {
  const ids = patches.map((patch) => study.records[patch]!.id);
  const names = patches.map((patch) => study.names[patch]!);
  const [a, b] = ids as [string, string];
  const two = patches.length === 2;
  const meet = two && neighboursOf(study.arrangement!, patches[0]!).some(({ patch }) => patch === patches[1]);
  const together = ids.slice(1).map((id): PinRecord => ({ kind: 'together', patches: [a, id] }));
  return (
    <>
      <h2 className={styles.name}>{names.length <= 6 ? listed(names) : `${names.length} patches`}</h2>
      <div className={styles.pins}>
        {two && (
          <>
            <Button
              className={styles.pin}
              onClick={() => addPin(study, { kind: 'before', patch: a, than: b })}
            >
              {names[0]} before {names[1]}
            </Button>
            <Button
              className={styles.pin}
              onClick={() => addPin(study, { kind: 'before', patch: b, than: a })}
            >
              {names[1]} before {names[0]}
            </Button>
          </>
        )}
        <Button className={styles.pin} onClick={() => addPin(study, ...together)}>
          Keep in one section
        </Button>
        {meet && (
          <Button className={styles.pin} onClick={() => addPin(study, { kind: 'apart', patches: [a, b] })}>
            New section between them
          </Button>
        )}
      </div>
    </>
  );
}
