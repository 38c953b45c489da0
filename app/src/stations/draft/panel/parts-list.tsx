import { useState } from 'react';
import { currentBlock, useWork } from '../../../store/work.ts';
import { counted } from '../../../ui/plural.ts';
import { LinesTable } from './lines-table.tsx';
import { NewLine } from './new-line.tsx';
import styles from './panel.module.css';
import { PatchList } from './patch-list.tsx';
import { PointsTable } from './points-table.tsx';

/** Everything on the canvas as lists: to read, to choose from, to change and to draw by typing. */
export function PartsList() {
  const [open, setOpen] = useState(false);
  const count = useWork((work) => currentBlock(work).drawing.splits.length);
  return (
    <details className={styles.part} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        Everything drawn, as a list <span className={styles.quiet}>{counted(count, 'line')}</span>
      </summary>
      {open && (
        <div className={styles.lists}>
          <NewLine />
          <LinesTable />
          <PointsTable />
          <PatchList />
        </div>
      )}
    </details>
  );
}
