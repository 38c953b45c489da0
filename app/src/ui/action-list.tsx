import type { LucideIcon } from 'lucide-react';
import type { ReactNode } from 'react';
import styles from './action-list.module.css';

/** Things that can be done, one under the other, in a panel. */
export function ActionList({ label, children }: { readonly label?: string; readonly children: ReactNode }) {
  return (
    <ul className={styles.list} aria-label={label}>
      {children}
    </ul>
  );
}

interface ActionProps {
  readonly icon?: LucideIcon;
  readonly keys?: string;
  readonly disabled?: boolean;
  readonly current?: boolean;
  readonly onClick: () => void;
  readonly children: ReactNode;
}

export function Action({ icon: Icon, keys, disabled, current, onClick, children }: ActionProps) {
  return (
    <li>
      <button
        type="button"
        className={styles.action}
        disabled={disabled}
        aria-current={current === true ? 'true' : undefined}
        onClick={onClick}
      >
        {Icon !== undefined && <Icon aria-hidden="true" size={18} strokeWidth={1.75} />}
        <span className={styles.words}>{children}</span>
        {keys !== undefined && <kbd>{keys}</kbd>}
      </button>
    </li>
  );
}
