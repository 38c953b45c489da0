import { Fragment, type KeyboardEvent, type ReactNode, useId } from 'react';
import { useWork } from '../../../store/work.ts';
import styles from './parts-table.module.css';
import { cellBeside, isBeginning } from './table-keys.ts';

interface PartsTableProps {
  readonly heading: string;
  /** What a row is about. */
  readonly of: string;
  /** Whose place each pair of columns is. */
  readonly groups: readonly string[];
  readonly children: ReactNode;
}

/**
 * A table of places: one stop of the Tab key, arrows go from cell to cell. Enter, a press, or simply typing begins to
 * change a value; Enter puts it in, Tab puts it in and goes on to the next.
 */
export function PartsTable({ heading, of, groups, children }: PartsTableProps) {
  const unit = useWork((work) => work.history.present.unit);
  const id = useId();
  return (
    <section className={styles.table} data-groups={groups.length}>
      <h3 id={id}>{heading}</h3>
      {/* Every value says by itself what it is: these words are for the eye. */}
      <div className={styles.heads} aria-hidden="true">
        <span>{of}</span>
        {groups.map((group) => (
          <span key={group} className={styles.group}>
            {group}, {unit}
          </span>
        ))}
        <span />
        {groups.map((group) => (
          <Fragment key={group}>
            <span>left</span>
            <span>top</span>
          </Fragment>
        ))}
      </div>
      <ul aria-labelledby={id} onKeyDown={walk}>
        {children}
      </ul>
    </section>
  );
}

function walk(event: KeyboardEvent<HTMLElement>): void {
  const cell = event.target as HTMLElement;
  // In a field the keys are for what is typed there.
  if (!cell.matches('button[data-cell]') || event.ctrlKey || event.metaKey || event.altKey) return;
  const to = cellBeside(cell, event.key);
  if (to !== null) {
    event.preventDefault();
    to.focus();
  } else if (isBeginning(event.key) && cell.dataset.cell === 'value') {
    // The field opens, and the character goes on to it: it is no key of the program's here.
    event.stopPropagation();
    cell.click();
  }
}
