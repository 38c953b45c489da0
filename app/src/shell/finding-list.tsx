import type { Drawing, Finding, Repair } from '@seamwright/arrangement';
import { useMemo, useRef, useState } from 'react';
import { type Pointed, usePointed } from '../store/pointed.ts';
import { applyRepair, changesOf } from '../store/repairs.ts';
import { useWork } from '../store/work.ts';
import { findingWords } from '../study/finding-words.ts';
import { repairsAreSought } from '../study/mending.ts';
import { FindingSign } from '../ui/finding-sign.tsx';
import { counted } from '../ui/plural.ts';
import { rove } from '../ui/roving.ts';
import { usePointing } from '../ui/use-pointing.ts';
import styles from './finding-list.module.css';
import { priceWords } from './price-words.ts';

/**
 * The findings with the signs and numbers that they have on the canvas, and their repairs ready to apply, best first. One
 * stop of the Tab key; arrows go through findings and repairs, and the canvas shows the one that is come to.
 */
export function FindingList() {
  const findings = useWork((work) => work.study?.findings);
  const drawing = useWork((work) => work.study?.drawing);
  const list = useRef<HTMLOListElement>(null);
  if (findings === undefined || findings.length === 0 || drawing === undefined) return null;
  return (
    <ol ref={list} tabIndex={-1} className={styles.list} aria-label="Findings" onKeyDown={rove}>
      {findings.map((finding, index) => (
        <FindingLine
          // biome-ignore lint/suspicious/noArrayIndexKey: a finding is known by its number
          key={index}
          finding={finding}
          index={index}
          drawing={drawing}
          // The button that was pressed goes away with its finding: the focus stays in the list.
          repaired={() => list.current?.focus()}
        />
      ))}
    </ol>
  );
}

interface FindingLineProps {
  readonly finding: Finding;
  readonly index: number;
  /** The drawing that the finding is about. */
  readonly drawing: Drawing;
  readonly repaired: () => void;
}

function FindingLine({ finding, index, drawing, repaired }: FindingLineProps) {
  const { severity, message, repairs, patches = [], ring } = finding;
  const unit = useWork((work) => work.history.present.unit);
  const names = useWork((work) => work.study?.names);
  const what: Pointed = { of: drawing, finding: index, ...(ring === undefined ? { patches } : {}) };
  const pointing = usePointing(what);
  const number = index + 1;
  const [all, setAll] = useState(false);
  // Before the proved ones are there, the finding's own would only go away under the pointer.
  const sought = useWork(({ study }) => study !== null && repairsAreSought(study, finding));
  const offered = sought ? repairs : [];
  const shown = all ? offered : offered.slice(0, FEW);
  return (
    <li className={styles.line}>
      <button
        type="button"
        data-stop
        tabIndex={index === 0 ? 0 : -1}
        className={styles.finding}
        {...pointing}
        // Where a press gives no focus, it shows all the same.
        onClick={() => usePointed.setState({ focused: what })}
      >
        <FindingSign severity={severity} number={number} />
        <span>{findingWords(message, unit, names)}</span>
      </button>
      {offered.length > 0 && (
        <ul className={styles.repairs} aria-label={`Repairs of finding ${number}`}>
          {shown.map((repair, place) => (
            <RepairLine
              // biome-ignore lint/suspicious/noArrayIndexKey: two may read alike
              key={place}
              repair={repair}
              best={place === 0 && offered.length > 1}
              index={index}
              drawing={drawing}
              repaired={repaired}
            />
          ))}
          {shown.length < offered.length && (
            <li>
              <button
                type="button"
                data-stop
                tabIndex={-1}
                className={styles.more}
                onClick={() => setAll(true)}
              >
                {counted(offered.length - shown.length, 'more repair')}
              </button>
            </li>
          )}
        </ul>
      )}
    </li>
  );
}

/** Repairs that are offered at once; the others are asked for. */
const FEW = 3;

interface RepairLineProps extends Pick<FindingLineProps, 'index' | 'drawing' | 'repaired'> {
  readonly repair: Repair;
  readonly best: boolean;
}

/** One repair: shown dashed on the canvas while it is pointed at, done when it is pressed. */
function RepairLine({ repair, best, index, drawing, repaired }: RepairLineProps) {
  const unit = useWork((work) => work.history.present.unit);
  const changes = useMemo(() => changesOf(drawing, repair), [drawing, repair]);
  const pointing = usePointing({ of: drawing, finding: index, ...changes });
  return (
    <li>
      <button
        type="button"
        data-stop
        tabIndex={-1}
        className={styles.repair}
        {...pointing}
        onClick={() => {
          applyRepair(drawing, repair);
          repaired();
        }}
      >
        <span className={styles.what}>
          {findingWords(repair.message, unit)}
          {best && <span className={styles.best}>best</span>}
        </span>
        {repair.price !== undefined && <span className={styles.price}>{priceWords(repair.price, unit)}</span>}
      </button>
    </li>
  );
}
