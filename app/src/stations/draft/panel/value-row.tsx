import { formatLength, type LengthUnit, sentence } from '@seamwright/geometry';
import { type KeyboardEvent, useId, useLayoutEffect, useRef, useState } from 'react';
import styles from './parts-table.module.css';
import { readPlace } from './read-place.ts';
import { valueAfter } from './table-keys.ts';

/** A value of a row, inches. */
export interface RowValue {
  readonly label: string;
  readonly inches: number;
  /** Puts another in its place; a sentence that comes back says why that cannot be. */
  readonly put: (inches: number) => string | undefined;
}

interface ValueRowProps {
  readonly name: string;
  readonly words?: string;
  readonly unit: LengthUnit;
  readonly values: readonly RowValue[];
  readonly chosen: boolean;
  /** The row that the Tab key comes to. */
  readonly stop: boolean;
  readonly onChoose: () => void;
}

interface Typing {
  readonly column: number;
  /** Null while it is the value as it is. */
  readonly text: string | null;
  readonly problem: string | null;
}

/** A row of a table of places. One of its values at a time is a field; what is wrong with it is said below the row. */
export function ValueRow({ name, words, unit, values, chosen, stop, onChoose }: ValueRowProps) {
  const [typing, setTyping] = useState<Typing | null>(null);
  const row = useRef<HTMLLIElement>(null);
  const comesBack = useRef<number | null>(null);
  // A field that has been emptied into the drawing is left once more when it goes.
  const settled = useRef(true);
  const problem = useId();
  // The field is gone with what was typed: the focus comes back to the cell that it was in.
  useLayoutEffect(() => {
    if (typing !== null || comesBack.current === null) return;
    valueCells(row.current!)[comesBack.current]?.focus();
    comesBack.current = null;
  }, [typing]);

  const begin = (column: number) => {
    settled.current = false;
    setTyping({ column, text: null, problem: null });
  };
  /** Whether what was typed was taken. */
  const commit = ({ column, text }: Typing): boolean => {
    const { inches, put } = values[column]!;
    const place = text === null || text === shown(inches, unit) ? null : readPlace(text, unit);
    const said = place === null ? undefined : place.ok ? put(place.value) : sentence(place.problem);
    settled.current = said === undefined;
    setTyping(said === undefined ? null : { column, text, problem: said });
    return settled.current;
  };
  const key = (event: KeyboardEvent<HTMLInputElement>, current: Typing) => {
    if (event.key === 'Escape') {
      event.stopPropagation();
      comesBack.current = current.column;
      settled.current = true;
      setTyping(null);
    } else if (event.key === 'Enter') {
      // The cell that gets the focus back would take the rest of the key for a press.
      event.preventDefault();
      comesBack.current = current.column;
      if (!commit(current)) comesBack.current = null;
    } else if (event.key === 'Tab') {
      const next = valueAfter(event.currentTarget, event.shiftKey ? -1 : 1);
      if (!commit(current)) event.preventDefault();
      else if (next !== null) {
        event.preventDefault();
        next.click();
      }
    }
  };
  return (
    <li ref={row} className={styles.row} data-chosen={chosen}>
      <button
        type="button"
        data-cell="name"
        tabIndex={stop ? 0 : -1}
        aria-pressed={chosen}
        className={styles.name}
        onClick={onChoose}
      >
        {name} {words !== undefined && <span className={styles.words}>{words}</span>}
      </button>
      {values.map(({ label, inches }, column) =>
        typing?.column === column ? (
          <input
            key={label}
            ref={takeFocus}
            data-cell="value"
            className={styles.field}
            data-settled={typing.text === null}
            value={typing.text ?? shown(inches, unit)}
            aria-label={`${name}, ${label}`}
            aria-invalid={typing.problem !== null}
            aria-describedby={typing.problem === null ? undefined : problem}
            autoComplete="off"
            spellCheck={false}
            onChange={(event) => setTyping({ ...typing, text: event.target.value })}
            onKeyDown={(event) => key(event, typing)}
            onBlur={() => !settled.current && commit(typing)}
          />
        ) : (
          <button
            key={label}
            type="button"
            data-cell="value"
            tabIndex={-1}
            className={styles.value}
            aria-label={`${name}, ${label}: ${shown(inches, unit)}`}
            onClick={() => begin(column)}
          >
            {shown(inches, unit)}
          </button>
        ),
      )}
      {typing !== null && typing.problem !== null && (
        <p id={problem} role="alert" className={styles.problem}>
          {typing.problem}
        </p>
      )}
    </li>
  );
}

const valueCells = (row: HTMLElement) => row.querySelectorAll<HTMLElement>('[data-cell="value"]');

function takeFocus(field: HTMLInputElement | null): void {
  if (field === null || field === document.activeElement) return;
  field.focus();
  field.select();
}

/** Without the unit, which the head of the column says. */
const shown = (inches: number, unit: LengthUnit): string =>
  formatLength(inches, unit).replace(/ (in|cm)$/, '');
