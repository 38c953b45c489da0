import {
  formatLength,
  type LengthRange,
  type LengthUnit,
  parseLength,
  type Result,
  sentence,
} from '@seamwright/geometry';
import { useState } from 'react';
import { useWork } from '../store/work.ts';
import { Field } from './field.tsx';

interface LengthFieldProps {
  readonly label: string;
  /** Inches. */
  readonly value: number;
  readonly range?: LengthRange;
  /** Reads what was typed where a plain length within a range is not what is asked for. */
  readonly read?: (typed: string, unit: LengthUnit) => Result<number>;
  readonly hint?: string;
  /** Called with inches when the field is left, or at Enter, and what was typed is a length within the range. */
  readonly onChange: (inches: number) => void;
}

/**
 * A length as people type it: 2 3/8, 2.375, 2⅜", 6cm. What is no length stays in the field with a sentence beside
 * it, and the value remains what it was. Escape brings the value back.
 */
export function LengthField({ label, value, range, read, hint, onChange }: LengthFieldProps) {
  const unit = useWork((work) => work.history.present.unit);
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const shown = typed ?? formatLength(value, unit);

  const letGo = () => {
    setTyped(null);
    setProblem(null);
  };
  const commit = () => {
    if (typed === null) return;
    const length = read === undefined ? parseLength(typed, unit, range) : read(typed, unit);
    if (!length.ok) {
      setProblem(sentence(length.problem));
      return;
    }
    letGo();
    if (length.value !== value) onChange(length.value);
  };

  return (
    <Field label={label} problem={problem} {...(hint === undefined ? {} : { hint })}>
      {(control) => (
        <input
          {...control}
          value={shown}
          inputMode="text"
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
