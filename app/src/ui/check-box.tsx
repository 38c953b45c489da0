import { type ReactNode, useId } from 'react';
import styles from './check-box.module.css';

interface CheckBoxProps {
  readonly label: ReactNode;
  readonly hint?: string;
  readonly checked: boolean;
  readonly disabled?: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** A wish that is made or not. */
export function CheckBox({ label, hint, checked, disabled, onChange }: CheckBoxProps) {
  const id = useId();
  const box = (
    <label className={styles.check}>
      <input
        type="checkbox"
        checked={checked}
        disabled={disabled}
        aria-describedby={hint === undefined ? undefined : id}
        onChange={(event) => onChange(event.target.checked)}
      />
      {label}
    </label>
  );
  if (hint === undefined) return box;
  return (
    <div>
      {box}
      <p id={id} className={styles.hint}>
        {hint}
      </p>
    </div>
  );
}
