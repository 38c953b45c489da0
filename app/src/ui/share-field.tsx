import { type TellRefused, TypedField } from './typed-field.tsx';

interface ShareFieldProps {
  readonly label: string;
  /** Between 0 and 1. */
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (share: number) => void;
  readonly onRefused?: TellRefused;
}

const shown = (share: number): string => `${Math.round(share * 1000) / 10} %`;

/** A part of a whole, in per cent. What is none stays in the field with a sentence beside it. */
export function ShareField({ label, value, least, most, onChange, onRefused }: ShareFieldProps) {
  return (
    <TypedField
      label={label}
      value={value}
      shown={shown(value)}
      inputMode="text"
      read={(typed) => {
        const figures = /^\s*(\d{1,3}(?:[.,]\d{1,6})?)\s*%?\s*$/.exec(typed)?.[1];
        const share = figures === undefined ? Number.NaN : Number(figures.replace(',', '.')) / 100;
        return share >= least && share <= most
          ? { value: share }
          : { problem: `Type a percentage from ${shown(least)} to ${shown(most)}.` };
      }}
      onChange={onChange}
      onRefused={onRefused}
    />
  );
}
