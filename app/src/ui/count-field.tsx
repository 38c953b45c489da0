import { type TakeValue, type TellRefused, TypedField } from './typed-field.tsx';

interface CountFieldProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly hint?: string;
  readonly onChange: TakeValue;
  readonly onRefused?: TellRefused;
}

/** A whole number. What is none stays in the field with a sentence beside it, and the value remains what it was. */
export function CountField({ label, value, least, most, hint, onChange, onRefused }: CountFieldProps) {
  return (
    <TypedField
      label={label}
      value={value}
      shown={String(value)}
      hint={hint}
      inputMode="numeric"
      read={(typed) => {
        const text = typed.trim();
        const count = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
        return count >= least && count <= most
          ? { value: count }
          : { problem: `Type a whole number from ${least} to ${most}.` };
      }}
      onChange={onChange}
      onRefused={onRefused}
    />
  );
}
