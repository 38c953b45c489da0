import { useState } from 'react';
import { FindingList } from '../../shell/finding-list.tsx';
import { currentDrawing, currentWishes, useWork } from '../../store/work.ts';
import { Choice } from '../../ui/choice.tsx';
import { Foldable } from '../../ui/foldable.tsx';
import frame from '../frame.module.css';
import { InHand } from './in-hand.tsx';
import { Joins } from './joins.tsx';
import { LeastSize } from './least-size.tsx';
import styles from './order-station.module.css';
import { Pins } from './pins.tsx';
import { SectionList } from './section-list.tsx';
import { SectionView, type Side } from './section-view.tsx';
import { Ways } from './ways.tsx';

const SIDES = [
  { value: 'front', label: 'Front' },
  { value: 'print', label: 'Printed side' },
] as const satisfies readonly { value: Side; label: string }[];

/** Where the sections, their piecing orders and their joins are seen, compared and pinned. */
export default function OrderStation() {
  const drawing = useWork(currentDrawing);
  const study = useWork((work) => work.study);
  const [side, setSide] = useState<Side>('front');
  return (
    <div className={`${frame.station} ${frame.wide} ${styles.station}`}>
      <div className={styles.views} data-side={side}>
        <div className={styles.choice}>
          <Choice label="Side shown" bare value={side} options={SIDES} onChange={setSide} />
        </div>
        <SectionView side="front" drawing={drawing} study={study} />
        <SectionView side="print" drawing={drawing} study={study} />
      </div>
      <Panel />
    </div>
  );
}

const countOf = ({ length }: readonly unknown[]): string => (length === 0 ? 'none' : String(length));

function Panel() {
  const study = useWork((work) => work.study);
  const { pins } = useWork(currentWishes);
  return (
    <section className={`${frame.panel} ${styles.panel}`} aria-label="Sections and joins">
      <div className={styles.parts}>
        <div className={styles.column}>
          {study !== null && (
            <Foldable
              id={study.findings.length === 0 ? 'no findings' : 'findings'}
              title="Findings"
              more={countOf(study.findings)}
            >
              <FindingList />
              <LeastSize />
            </Foldable>
          )}
          {study !== null && study.plan !== null && (
            <>
              <Foldable id="ways" title="Ways to sew it" more={study.wishes.choice}>
                <Ways study={study} />
              </Foldable>
              <Foldable id="pins" title="Pins" more={countOf(pins)}>
                <Pins study={study} />
              </Foldable>
            </>
          )}
          {study !== null && study.problem !== null && (
            <p className={styles.nothing}>
              There is nothing to put in order yet: the drawing has to be mended first, at the Draft station.
            </p>
          )}
        </div>
        {study !== null && study.plan !== null && (
          <div className={styles.column}>
            <SectionList study={study} />
            <Joins study={study} />
          </div>
        )}
      </div>
      {study !== null && study.plan !== null && <InHand study={study} />}
    </section>
  );
}
