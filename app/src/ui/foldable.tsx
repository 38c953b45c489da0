import type { ReactNode } from 'react';
import { setting, useSettings } from '../store/settings.ts';
import styles from './foldable.module.css';

interface FoldableProps {
  /** Under which name the program remembers whether it is folded. */
  readonly id: string;
  readonly title: string;
  /** A word that stands beside the title, folded or not. */
  readonly more: string;
  readonly children: ReactNode;
}

/** A part of a panel that can be folded up; it stays so until it is unfolded, on the next visit too. */
export function Foldable({ id, title, more, children }: FoldableProps) {
  const folded = useSettings((settings) => settings.folded.includes(id));
  const fold = (open: boolean) => {
    if (open !== folded) return;
    const { folded: others } = useSettings.getState();
    setting({ folded: open ? others.filter((one) => one !== id) : [...others, id] });
  };
  return (
    <details
      className={styles.part}
      open={!folded}
      onToggle={(event) => fold(event.currentTarget.open)}
      aria-label={title}
    >
      <summary>
        <h2>{title}</h2>
        <span>{more}</span>
      </summary>
      {!folded && <div className={styles.content}>{children}</div>}
    </details>
  );
}
