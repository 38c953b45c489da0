import { X } from 'lucide-react';
import { type ReactNode, useEffect, useId, useRef } from 'react';
import { IconButton } from './button.tsx';
import styles from './dialog.module.css';

interface DialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** For what is looked at side by side. */
  readonly wide?: boolean;
  /** The buttons at the end. */
  readonly actions?: ReactNode;
}

/** A dialog that has the keyboard until it is closed: Escape, its button, or a press beside it. */
export function Dialog({ title, open, onClose, children, wide = false, actions }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null);
  const heading = useId();

  useEffect(() => {
    const dialog = element.current;
    if (dialog === null) return;
    if (open && !dialog.open) {
      dialog.showModal();
      // The field that the dialog is about, rather than the button that closes it.
      dialog.querySelector<HTMLElement>('input:not([type=checkbox])')?.focus();
    }
    if (!open && dialog.open) dialog.close();
  }, [open]);

  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape does the same by keyboard
    <dialog
      ref={element}
      className={wide ? `${styles.dialog} ${styles.wide}` : styles.dialog}
      aria-labelledby={heading}
      // Escape is told here at once. “close” comes later: who asks for the dialog in between would have it closed again.
      onCancel={(event) => event.target === event.currentTarget && onClose()}
      onClose={(event) => event.currentTarget.open || onClose()}
      onClick={(event) => event.target === event.currentTarget && onClose()}
    >
      {open && (
        <div className={styles.body}>
          <header className={styles.header}>
            <h2 id={heading}>{title}</h2>
            <IconButton label="Close" icon={X} onClick={onClose} />
          </header>
          <div className={styles.content}>{children}</div>
          {actions !== undefined && <footer className={styles.actions}>{actions}</footer>}
        </div>
      )}
    </dialog>
  );
}
