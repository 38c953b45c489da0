import { useState } from 'react';
import { Field } from './field.tsx';

interface CountFieldProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly hint?: string;
  readonly onChange: (count: number) => void;
}

/** A whole number. What is none stays in the field with a sentence beside it, and the value remains what it was. */
export function CountField({ label, value, least, most, hint, onChange }: CountFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const letGo = () => {
    setTyped(null);
    setProblem(null);
  };
  const commit = () => {
    if (typed === null) return;
    const text = typed.trim();
    const count = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
    if (!(count >= least && count <= most)) {
      setProblem(`Type a whole number from ${least} to ${most}.`);
      return;
    }
    letGo();
    if (count !== value) onChange(count);
  };

  return (
    <Field label={label} problem={problem} {...(hint === undefined ? {} : { hint })}>
      {(control) => (
        <input
          {...control}
          value={typed ?? String(value)}
          inputMode="numeric"
          autoComplete="off"
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
