import { useState } from 'react';
import { FindingList } from '../../shell/finding-list.tsx';
import { currentDrawing, useWork } from '../../store/work.ts';
import { Choice } from '../../ui/choice.tsx';
import { Joins } from './joins.tsx';
import styles from './order-station.module.css';
import { SectionList } from './section-list.tsx';
import { SectionView, type Side } from './section-view.tsx';

const SIDES = [
  { value: 'front', label: 'Front' },
  { value: 'print', label: 'Printed side' },
] as const satisfies readonly { value: Side; label: string }[];

/** Where the sections, their piecing orders and their joins are seen. */
export default function OrderStation() {
  const drawing = useWork(currentDrawing);
  const study = useWork((work) => work.study);
  const [side, setSide] = useState<Side>('front');
  const sewable = study?.plan !== null && study?.plan !== undefined;
  return (
    <div className={styles.station}>
      <div className={styles.views} data-side={side}>
        <div className={styles.choice}>
          <Choice label="Side shown" bare value={side} options={SIDES} onChange={setSide} />
        </div>
        <SectionView side="front" drawing={drawing} study={study} />
        <SectionView side="print" drawing={drawing} study={study} />
      </div>
      <section className={styles.panel} aria-label="Sections and joins">
        {sewable && <SectionList study={study} />}
        {sewable && <Joins plan={study.plan!} />}
        {study !== null && study.findings.length > 0 && (
          <section className={styles.part}>
            <h2>Findings</h2>
            <FindingList />
          </section>
        )}
        {study?.problem !== null && study?.problem !== undefined && (
          <p className={styles.nothing}>
            There is nothing to put in order yet: the drawing has to be mended first, at the Draft station.
          </p>
        )}
      </section>
    </div>
  );
}
