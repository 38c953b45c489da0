import { type KeyboardEvent, type ReactNode, useId } from 'react';
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
    <section>
      <h3 id={id}>{heading}</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table to walk through, cell by cell */}
      <table role="grid" aria-labelledby={id} className={styles.table} onKeyDown={walk}>
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {of}
            </th>
            {groups.map((group) => (
              <th key={group} scope="colgroup" colSpan={2}>
                {group}, {unit}
              </th>
            ))}
          </tr>
          <tr>
            {groups.map((group) => [
              <th key={`${group} left`} scope="col">
                left
              </th>,
              <th key={`${group} top`} scope="col">
                top
              </th>,
            ])}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
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
