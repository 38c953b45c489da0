import { useEffect, useState } from 'react';
import { Field } from './field.tsx';

/** What was typed, as a value; or what to say of it. */
export type Reading = { readonly value: number } | { readonly problem: string };

/** Takes a new value; a sentence that comes back says why it cannot be, and the field says it. */
export type TakeValue = ((value: number) => void) | ((value: number) => string | undefined);

interface TypedFieldProps {
  readonly label: string;
  readonly value: number;
  /** The value as it is shown while nobody types. */
  readonly shown: string;
  readonly hint?: string | undefined;
  readonly inputMode: 'numeric' | 'text';
  readonly read: (typed: string) => Reading;
  /** Called when the field is left, or at Enter, and what was typed is another value. */
  readonly onChange: TakeValue;
  readonly onRefused?: TellRefused | undefined;
}

/** Told true when what was typed is refused, and stays in the field; false when it no longer does. */
export type TellRefused = (refused: boolean) => void;

/**
 * A number as people type it. What cannot be read, or is refused, stays in the field with a sentence beside it, and the
 * value remains what it was. Escape brings the value back; so does a value that changes for another reason.
 */
export function TypedField(props: TypedFieldProps) {
  const { label, value, shown, hint, inputMode, read, onChange, onRefused } = props;
  const [typing, setTyping] = useState<Typing | null>(null);
  const current = typing?.over === value ? typing : null;

  const refused = current !== null && current.problem !== null;
  useEffect(() => onRefused?.(refused), [refused, onRefused]);

  const commit = () => {
    if (current === null) return;
    const reading = read(current.text);
    const problem = 'problem' in reading ? reading.problem : take(reading.value);
    setTyping(problem === undefined ? null : { ...current, problem });
  };
  const take = (typed: number): string | undefined => {
    const said = typed === value ? undefined : onChange(typed);
    return typeof said === 'string' ? said : undefined;
  };

  return (
    <Field label={label} problem={current?.problem} {...(hint === undefined ? {} : { hint })}>
      {(control) => (
        <input
          {...control}
          data-settled={current === null}
          value={current?.text ?? shown}
          inputMode={inputMode}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) =>
            setTyping({ text: event.target.value, over: value, problem: current?.problem ?? null })
          }
          onFocus={(event) => event.target.select()}
          onBlur={commit}
          onKeyDown={(event) => {
            if (event.key === 'Enter') commit();
            if (event.key === 'Escape' && current !== null) {
              // A dialog round it stays open.
              event.preventDefault();
              event.stopPropagation();
              setTyping(null);
            }
          }}
        />
      )}
    </Field>
  );
}

interface Typing {
  readonly text: string;
  /** The value that was there when the typing began. */
  readonly over: number;
  readonly problem: string | null;
}
