import type { Fabric } from '@seamwright/pattern';
import { ChevronDown, ChevronUp, Plus, Trash2 } from 'lucide-react';
import { type RefObject, useId, useRef, useState } from 'react';
import { endStep } from '../../../store/changes.ts';
import { addFabric, fabricsOf, recolourFabric, removeFabric, renameFabric } from '../../../store/fabrics.ts';
import { useWork } from '../../../store/work.ts';
import { Button, IconButton } from '../../../ui/button.tsx';
import { Dialog } from '../../../ui/dialog.tsx';
import { Field } from '../../../ui/field.tsx';
import { FabricDetails } from './fabric-details.tsx';
import styles from './fabrics.module.css';

/** The pattern's fabrics: their names and colours, new ones, and away with one. */
export function FabricsOfPattern({
  open,
  onClose,
}: {
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  return (
    <Dialog
      title="Fabrics of the pattern"
      open={open}
      onClose={onClose}
      actions={
        <Button look="main" onClick={onClose}>
          Done
        </Button>
      }
    >
      <Fabrics />
    </Dialog>
  );
}

function Fabrics() {
  const fabrics = useWork(fabricsOf);
  const adding = useRef<HTMLInputElement>(null);
  return (
    <div className={styles.fabrics}>
      {fabrics.length === 0 ? (
        <p>There are none yet: name one and give it a colour.</p>
      ) : (
        <ul className={styles.list} aria-label="Fabrics">
          {fabrics.map((fabric) => (
            <FabricLine key={fabric.id} fabric={fabric} adding={adding} />
          ))}
        </ul>
      )}
      <NewFabric field={adding} />
    </div>
  );
}

interface FabricLineProps {
  readonly fabric: Fabric;
  /** Has the focus when the last line is gone. */
  readonly adding: RefObject<HTMLInputElement | null>;
}

function FabricLine({ fabric, adding }: FabricLineProps) {
  const { id, name, colour } = fabric;
  const [typed, setTyped] = useState<string | null>(null);
  const [open, setOpen] = useState(false);
  const nameless = typed !== null && typed.trim() === '';
  const problem = useId();
  const commit = () => {
    // What is no name stays in the field, with the sentence beside it.
    if (typed === null || nameless) return;
    renameFabric(id, typed.trim());
    setTyped(null);
  };
  return (
    <li className={styles.line}>
      <input
        type="color"
        className={styles.colour}
        aria-label={`Colour of ${name}`}
        value={colour}
        onChange={(event) => recolourFabric(id, event.target.value)}
        onBlur={endStep}
      />
      <input
        className={styles.typed}
        aria-label={`Name of ${name}`}
        aria-invalid={nameless}
        aria-describedby={nameless ? problem : undefined}
        value={typed ?? name}
        maxLength={60}
        autoComplete="off"
        onChange={(event) => setTyped(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit();
          if (event.key === 'Escape' && typed !== null) {
            event.preventDefault();
            setTyped(null);
          }
        }}
      />
      <IconButton
        label={`More about ${name}`}
        icon={open ? ChevronUp : ChevronDown}
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      />
      <IconButton
        label={`Remove ${name}`}
        icon={Trash2}
        onClick={(event) => {
          const line = event.currentTarget.closest('li')!;
          const beside = line.nextElementSibling ?? line.previousElementSibling;
          removeFabric(fabric);
          // No field: a telephone would bring up its keyboard. Nor what removes: who presses twice would remove two.
          (beside?.querySelector('button') ?? adding.current)?.focus();
        }}
      />
      {nameless && (
        <p id={problem} className={styles.problem} role="alert">
          A fabric needs a name: type one, or press Escape for “{name}”.
        </p>
      )}
      {open && <FabricDetails fabric={fabric} />}
    </li>
  );
}

const FIRST_COLOUR = '#7a8f6a';

function NewFabric({ field }: { readonly field: RefObject<HTMLInputElement | null> }) {
  const [name, setName] = useState('');
  const [colour, setColour] = useState(FIRST_COLOUR);
  const [problem, setProblem] = useState<string | null>(null);
  const add = () => {
    const wanted = name.trim();
    if (wanted === '') {
      setProblem('A fabric needs a name, so that it can be told from the others. Type one.');
      field.current?.focus();
      return;
    }
    addFabric(wanted, colour);
    setName('');
    setProblem(null);
    field.current?.focus();
  };
  return (
    <form
      className={styles.add}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <input
        type="color"
        className={styles.colour}
        aria-label="Colour of the new fabric"
        value={colour}
        onChange={(event) => setColour(event.target.value)}
      />
      <Field label="New fabric" problem={problem}>
        {(control) => (
          <input
            {...control}
            ref={field}
            value={name}
            maxLength={60}
            autoComplete="off"
            onChange={(event) => setName(event.target.value)}
          />
        )}
      </Field>
      <Button icon={Plus} onClick={add}>
        Add
      </Button>
    </form>
  );
}
