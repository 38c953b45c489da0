import { fail, LARGEST_SIZE, type LengthUnit, parseLength, type Result } from '@seamwright/geometry';
import { LengthField } from '../../../ui/length-field.tsx';

interface PlaceFieldProps {
  readonly label: string;
  /** Inches; less than 0 beyond the block's first edge. */
  readonly value: number;
  readonly onChange: (inches: number) => void;
}

/** One coordinate. Unlike a size it may be less than 0: lines may begin outside the block. */
export function PlaceField({ label, value, onChange }: PlaceFieldProps) {
  return <LengthField label={label} value={value} read={readPlace} onChange={onChange} />;
}

const MINUS = /^\s*[-−–]\s*/;

export function readPlace(typed: string, unit: LengthUnit): Result<number> {
  const length = parseLength(typed.replace(MINUS, ''), unit);
  if (!length.ok) return length;
  if (length.value > LARGEST_SIZE) return fail('That is too far away', '', `Stay within ${LARGEST_SIZE} in`);
  return MINUS.test(typed) ? { ok: true, value: 0 - length.value } : length;
}
