import type { LucideIcon } from 'lucide-react';
import type { ButtonHTMLAttributes, Ref } from 'react';
import styles from './button.module.css';

type Native = Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'type'>;

interface ButtonProps extends Native {
  readonly icon?: LucideIcon;
  /** `main`: the one thing that this place is for. `quiet`: no frame until pointed at. */
  readonly look?: 'plain' | 'main' | 'quiet';
  /** It does nothing while something is under way, but keeps the keyboard, which a disabled one loses. */
  readonly waits?: boolean;
  readonly ref?: Ref<HTMLButtonElement>;
}

export function Button({ icon: Icon, look = 'plain', waits, className, children, ...rest }: ButtonProps) {
  return (
    <button
      {...rest}
      {...(waits && { 'aria-disabled': true, onClick: undefined })}
      type="button"
      className={[styles.button, styles[look], className].join(' ')}
    >
      {Icon !== undefined && <Icon aria-hidden="true" size={18} strokeWidth={1.75} />}
      {children}
    </button>
  );
}

interface IconButtonProps extends Native {
  /** Its name: for screen readers, and shown when pointed at. */
  readonly label: string;
  readonly icon: LucideIcon;
  /** The keys that do the same, shown with the name, e.g. `Ctrl+Z`. */
  readonly keys?: string;
  readonly ref?: Ref<HTMLButtonElement>;
}

export function IconButton({ label, icon: Icon, keys, className, ...rest }: IconButtonProps) {
  return (
    <button
      {...rest}
      type="button"
      aria-label={label}
      title={keys === undefined ? label : `${label} (${keys})`}
      className={[styles.button, styles.quiet, styles.icon, className].join(' ')}
    >
      <Icon aria-hidden="true" size={18} strokeWidth={1.75} />
    </button>
  );
}
