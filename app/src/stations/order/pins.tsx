import { patchesOfPin } from '@seamwright/arrangement';
import type { PinRecord } from '@seamwright/pattern';
import { TriangleAlert, X } from 'lucide-react';
import { useRef } from 'react';
import type { Pointed } from '../../store/pointed.ts';
import { removePins, samePin } from '../../store/wishes.ts';
import { currentWishes, useWork } from '../../store/work.ts';
import { neighboursOf } from '../../study/neighbours.ts';
import type { Study } from '../../study/study.ts';
import { Button, IconButton } from '../../ui/button.tsx';
import { counted } from '../../ui/plural.ts';
import { usePointing } from '../../ui/use-pointing.ts';
import { patchOf } from './patch-label.ts';
import { lostWords, pinStep, pinWords } from './pin-words.ts';
import styles from './pins.module.css';

/** What the maker wants of the order: every pin with what it does; first those that cannot hold, and those that are lost. */
export function Pins({ study }: { readonly study: Study }) {
  const { pins } = useWork(currentWishes);
  const place = useRef<HTMLDivElement>(null);
  const { clashing, undecided, lost } = study;
  const among = (some: readonly PinRecord[]) => (pin: PinRecord) => some.some((other) => samePin(pin, other));
  const clash = pins.filter(among(clashing));
  const gone = pins.filter(among(lost));
  const open = pins.filter(among(undecided));
  const holding = pins.filter((pin) => ![clash, gone, open].some((others) => others.includes(pin)));

  const remove = (pin: PinRecord) => {
    removePins('Remove a pin', [pin]);
    // The button that was pressed is gone: the focus stays where pins are.
    place.current?.focus();
  };
  return (
    <div ref={place} tabIndex={-1} className={styles.pins}>
      {pins.length === 0 && (
        <p className={styles.none}>
          Take a patch in hand, here or on the block, to say when it is sewn, and where; with Shift, a second
          one.
        </p>
      )}
      {clash.length > 0 && (
        <section className={styles.group} aria-label="Pins that cannot hold">
          <p className={styles.caution}>
            <TriangleAlert aria-hidden="true" size={18} />
            {clash.length === 1
              ? 'This pin cannot hold in this block, so the plan leaves it out. Remove it, or change the drawing.'
              : `These ${clash.length} pins cannot hold together, so the plan leaves them out. Remove one of them.`}
          </p>
          <PinList label="Pins that cannot hold" pins={clash} study={study} remove={remove} />
        </section>
      )}
      {open.length > 0 && (
        <section className={styles.group} aria-label="Pins that no way was found for">
          <p className={styles.caution}>
            <TriangleAlert aria-hidden="true" size={18} />
            {study.refined
              ? `No way was found to heed ${open.length === 1 ? 'this pin' : `these ${open.length} pins`}, though there may be one. The plan leaves ${open.length === 1 ? 'it' : 'them'} out.`
              : `A way to heed ${open.length === 1 ? 'this pin' : `these ${open.length} pins`} is being looked for.`}
          </p>
          <PinList label="Pins that no way was found for" pins={open} study={study} remove={remove} />
        </section>
      )}
      {gone.length > 0 && (
        <section className={styles.group} aria-label="Lost pins">
          <p className={styles.caution}>
            <TriangleAlert aria-hidden="true" size={18} />
            {counted(gone.length, 'pin is', 'pins are')} lost: a later edit removed the patch. Undo brings it
            back.
          </p>
          <PinList label="Lost pins" pins={gone} study={study} remove={remove} lost />
          {gone.length > 1 && (
            <Button onClick={() => removePins('Remove lost pins', gone)}>Remove all lost pins</Button>
          )}
        </section>
      )}
      {holding.length > 0 && <PinList label="Pins" pins={holding} study={study} remove={remove} />}
    </div>
  );
}

interface PinListProps {
  readonly label: string;
  readonly pins: readonly PinRecord[];
  readonly study: Study;
  readonly remove: (pin: PinRecord) => void;
  readonly lost?: boolean;
}

function PinList({ label, pins, study, remove, lost = false }: PinListProps) {
  return (
    <ul aria-label={label}>
      {pins.map((pin) => (
        <PinLine key={JSON.stringify(pin)} pin={pin} study={study} remove={remove} lost={lost} />
      ))}
    </ul>
  );
}

interface PinLineProps {
  readonly pin: PinRecord;
  readonly study: Study;
  readonly remove: (pin: PinRecord) => void;
  readonly lost: boolean;
}

function PinLine({ pin, study, remove, lost }: PinLineProps) {
  const pointing = usePointing(placeOf(pin, study));
  return (
    <li className={styles.line} {...pointing}>
      <span>{lost ? lostWords(pin, study) : pinWords(pin, study)}</span>
      <IconButton label={`Remove: ${pinStep(pin, study)}`} icon={X} onClick={() => remove(pin)} />
    </li>
  );
}

/** The patches that a pin is about, and the seam at which it divides. */
function placeOf(pin: PinRecord, study: Study): Pointed {
  const patches = patchesOfPin(pin)
    .map((id) => patchOf(study, id))
    .filter((patch) => patch >= 0);
  const [p, q] = patches;
  const seams =
    pin.kind !== 'apart' || p === undefined || q === undefined || study.arrangement === null
      ? []
      : (neighboursOf(study.arrangement, p).find(({ patch }) => patch === q)?.seams ?? []);
  return { of: study.drawing, patches, seams };
}
