import { sentence } from '@seamwright/geometry';
import { parseAngle } from './angle.ts';
import { type TakeValue, TypedField } from './typed-field.tsx';

interface AngleFieldProps {
  readonly label: string;
  /** Degrees. */
  readonly value: number;
  readonly hint?: string;
  /** Called with degrees, from −360 to 360. */
  readonly onChange: TakeValue;
}

/** An angle in degrees. What is none stays in the field with a sentence beside it, and the value remains. */
export function AngleField({ label, value, hint, onChange }: AngleFieldProps) {
  return (
    <TypedField
      label={label}
      value={value}
      shown={`${Math.round(value * 100) / 100}°`}
      hint={hint}
      inputMode="text"
      read={(typed) => {
        const angle = parseAngle(typed);
        return angle.ok ? angle : { problem: sentence(angle.problem) };
      }}
      onChange={onChange}
    />
  );
}
