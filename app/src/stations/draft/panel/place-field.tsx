import { LengthField } from '../../../ui/length-field.tsx';
import type { TakeValue } from '../../../ui/typed-field.tsx';
import { readPlace } from './read-place.ts';

interface PlaceFieldProps {
  readonly label: string;
  /** Inches; less than 0 beyond the block's first edge. */
  readonly value: number;
  readonly onChange: TakeValue;
}

/** One coordinate. Unlike a size it may be less than 0: lines may begin outside the block. */
export function PlaceField({ label, value, onChange }: PlaceFieldProps) {
  return <LengthField label={label} value={value} read={readPlace} onChange={onChange} />;
}
