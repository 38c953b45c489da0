import {
  formatLength,
  type LengthRange,
  type LengthUnit,
  parseLength,
  type Result,
  sentence,
} from '@seamwright/geometry';
import { useWork } from '../store/work.ts';
import { type TakeValue, type TellRefused, TypedField } from './typed-field.tsx';

interface LengthFieldProps {
  readonly label: string;
  /** Inches. */
  readonly value: number;
  readonly range?: LengthRange;
  /** How the value is shown; as any length is, when left out. */
  readonly write?: (inches: number, unit: LengthUnit) => string;
  /** Reads what was typed where a plain length within a range is not what is asked for. */
  readonly read?: (typed: string, unit: LengthUnit) => Result<number>;
  readonly hint?: string;
  /** Called with inches when the field is left, or at Enter, and what was typed is a length within the range. */
  readonly onChange: TakeValue;
  readonly onRefused?: TellRefused;
}

/**
 * A length as people type it: 2 3/8, 2.375, 2⅜", 6cm. What is no length stays in the field with a sentence beside
 * it, and the value remains what it was. Escape brings the value back.
 */
export function LengthField({
  label,
  value,
  range,
  write = formatLength,
  read,
  hint,
  onChange,
  onRefused,
}: LengthFieldProps) {
  const unit = useWork((work) => work.history.present.unit);
  return (
    <TypedField
      label={label}
      value={value}
      shown={write(value, unit)}
      hint={hint}
      inputMode="text"
      read={(typed) => {
        const length = read === undefined ? parseLength(typed, unit, range) : read(typed, unit);
        return length.ok ? length : { problem: sentence(length.problem) };
      }}
      onChange={onChange}
      onRefused={onRefused}
    />
  );
}
