import type { Finding, Repair } from '@seamwright/arrangement';
import { change } from '../store/changes.ts';
import { applyRepair } from '../store/repairs.ts';
import { useWork } from '../store/work.ts';
import { Button } from '../ui/button.tsx';
import { FindingSign } from '../ui/finding-sign.tsx';
import styles from './finding-list.module.css';

/** The findings with the signs and numbers that they have on the canvas, and their repairs ready to apply. */
export function FindingList() {
  const findings = useWork((work) => work.study?.findings);
  if (findings === undefined || findings.length === 0) return null;
  return (
    <ol className={styles.list} aria-label="Findings">
      {findings.map((finding, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a finding is known by its number
        <FindingLine key={index} finding={finding} number={index + 1} />
      ))}
    </ol>
  );
}

function FindingLine({ finding, number }: { readonly finding: Finding; readonly number: number }) {
  return (
    <li className={styles.line}>
      <FindingSign severity={finding.severity} number={number} />
      <div className={styles.words}>
        <p>{finding.message}</p>
        {finding.repairs.map((repair) => (
          <RepairButton key={repair.message} repair={repair} />
        ))}
      </div>
    </li>
  );
}

function RepairButton({ repair }: { readonly repair: Repair }) {
  return (
    <Button onClick={() => change('Repair', (drawing) => applyRepair(drawing, repair))}>
      {repair.message}
    </Button>
  );
}
