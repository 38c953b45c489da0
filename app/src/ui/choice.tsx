import { useId } from 'react';
import styles from './choice.module.css';

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly label: string; readonly name?: string }[];
  readonly onChange: (value: T) => void;
  /** The label is for screen readers only. */
  readonly bare?: boolean;
}

/** One of a few, side by side: native radio buttons, so arrows and Tab work as everywhere. */
export function Choice<T extends string>({ label, value, options, onChange, bare = false }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset className={styles.choice}>
      <legend className={bare ? 'heard' : styles.legend}>{label}</legend>
      <div className={styles.row}>
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="radio"
              className="pressed-through"
              name={name}
              value={option.value}
              checked={option.value === value}
              aria-label={option.name}
              onChange={() => onChange(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
