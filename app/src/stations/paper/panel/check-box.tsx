import { useId } from 'react';
import styles from './panel.module.css';

interface CheckBoxProps {
  readonly label: string;
  readonly hint?: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** A wish that is made or not. */
export function CheckBox({ label, hint, checked, onChange }: CheckBoxProps) {
  const id = useId();
  return (
    <div className={styles.wish}>
      <label className={styles.check}>
        <input
          type="checkbox"
          checked={checked}
          aria-describedby={hint === undefined ? undefined : id}
          onChange={(event) => onChange(event.target.checked)}
        />
        {label}
      </label>
      {hint !== undefined && <p id={id}>{hint}</p>}
    </div>
  );
}
