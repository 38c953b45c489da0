import { useState } from 'react';
import { Field } from '../../../ui/field.tsx';
import type { Reading } from '../../../ui/typed-field.tsx';

interface MeasureFieldProps {
  /** By which it is found when a number is typed on the drawing: its `data-measure`. */
  readonly id?: string;
  readonly label: string;
  /** Nothing: it is left open. */
  readonly value: number | undefined;
  readonly shown: (value: number) => string;
  /** What it is at the moment while it is left open. */
  readonly now: string;
  readonly read: (typed: string) => Reading;
  /** Called at every key that makes what is typed another value; nothing where the field is empty, or is no value yet. */
  readonly onChange: (value: number | undefined) => void;
  /** Enter, with something that can be read or with nothing. */
  readonly onEnter: () => void;
  /** Escape, with nothing in the field. */
  readonly onLeave: () => void;
}

/**
 * A measure that can be left open, and that shows at once what comes of it. What cannot be read stays in the field with
 * a sentence beside it once the field is left; Escape empties it.
 */
export function MeasureField(props: MeasureFieldProps) {
  const { id, label, value, shown, now, read, onChange, onEnter, onLeave } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const type = (text: string) => {
    setTyped(text);
    setProblem(null);
    const reading = text.trim() === '' ? { value: undefined } : read(text);
    const next = 'problem' in reading ? undefined : reading.value;
    if (next !== value) onChange(next);
  };
  /** True: there is nothing in the field that cannot be read. */
  const settle = (): boolean => {
    const reading = typed === null || typed.trim() === '' ? { value: undefined } : read(typed);
    if ('problem' in reading) {
      setProblem(reading.problem);
      return false;
    }
    setTyped(null);
    return true;
  };
  return (
    <Field label={label} problem={problem}>
      {(control) => (
        <input
          {...control}
          data-measure={id}
          data-settled={typed === null && value === undefined}
          value={typed ?? (value === undefined ? '' : shown(value))}
          placeholder={now}
          autoComplete="off"
          enterKeyHint="done"
          spellCheck={false}
          onChange={(event) => type(event.target.value)}
          onFocus={(event) => event.target.select()}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && settle()) onEnter();
            if (event.key !== 'Escape') return;
            event.stopPropagation();
            if (value === undefined && typed === null) onLeave();
            type('');
            setTyped(null);
          }}
        />
      )}
    </Field>
  );
}
