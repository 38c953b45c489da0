import { type ReactNode, useId } from 'react';
import styles from './field.module.css';

interface FieldProps {
  readonly label: string;
  /** What is wrong with what was typed; shown beside the field and read out with it. */
  readonly problem?: string | null | undefined;
  readonly hint?: string;
  /** Gets the ids and states that the control itself must carry. */
  readonly children: (control: {
    readonly id: string;
    readonly 'aria-invalid': boolean;
    readonly 'aria-describedby': string | undefined;
  }) => ReactNode;
}

/** A label, a control, and what is wrong with it, together. */
export function Field({ label, problem, hint, children }: FieldProps) {
  const id = useId();
  const wrong = problem !== null && problem !== undefined;
  const described = wrong ? `${id}-problem` : hint === undefined ? undefined : `${id}-hint`;
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      {children({ id, 'aria-invalid': wrong, 'aria-describedby': described })}
      {wrong ? (
        <p id={`${id}-problem`} className={styles.problem} role="alert">
          {problem}
        </p>
      ) : (
        hint !== undefined && (
          <p id={`${id}-hint`} className={styles.hint}>
            {hint}
          </p>
        )
      )}
    </div>
  );
}
