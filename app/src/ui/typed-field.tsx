import { useState } from 'react';
import { Field } from './field.tsx';

/** What was typed, as a value; or what to say of it. */
export type Reading = { readonly value: number } | { readonly problem: string };

interface TypedFieldProps {
  readonly label: string;
  readonly value: number;
  /** The value as it is shown while nobody types. */
  readonly shown: string;
  readonly hint?: string | undefined;
  readonly inputMode: 'numeric' | 'text';
  readonly read: (typed: string) => Reading;
  /** Called when the field is left, or at Enter, and what was typed is another value. */
  readonly onChange: (value: number) => void;
}

/**
 * A number as people type it. What cannot be read stays in the field with a sentence beside it, and the value remains
 * what it was. Escape brings the value back.
 */
export function TypedField({ label, value, shown, hint, inputMode, read, onChange }: TypedFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const letGo = () => {
    setTyped(null);
    setProblem(null);
  };
  const commit = () => {
    if (typed === null) return;
    const reading = read(typed);
    if ('problem' in reading) {
      setProblem(reading.problem);
      return;
    }
    letGo();
    if (reading.value !== value) onChange(reading.value);
  };

  return (
    <Field label={label} problem={problem} {...(hint === undefined ? {} : { hint })}>
      {(control) => (
        <input
          {...control}
          value={typed ?? shown}
          inputMode={inputMode}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => setTyped(event.target.value)}
          onFocus={(event) => event.target.select()}
          onBlur={commit}
          onKeyDown={(event) => {
            if (event.key === 'Enter') commit();
            if (event.key === 'Escape' && typed !== null) {
              event.stopPropagation();
              letGo();
            }
          }}
        />
      )}
    </Field>
  );
}
