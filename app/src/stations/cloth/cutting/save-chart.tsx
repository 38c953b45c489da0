import { CUTTING_CAUTIONS, type CutOut, chartCsv, layerCautions } from '@seamwright/cloth';
import { FileDown } from 'lucide-react';
import { download, fileName } from '../../../keeping/download.ts';
import { announce } from '../../../store/notices.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';

/** The chart as a file, and what to mind with the cutter in hand. */
export function SaveChart({ answer }: { readonly answer: CutOut }) {
  const saveCsv = () => {
    const name = fileName(`${currentBlock(useWork.getState()).name}, cutting`, '.csv');
    const text = chartCsv(
      answer.rows,
      answer.plans.map(({ cloth }) => cloth),
    );
    download(name, text, 'text/csv');
    announce(`Saved ${name}`);
  };
  const cautions = [...CUTTING_CAUTIONS, ...layerCautions(answer.rows)];
  return (
    <section className={station.part} aria-label="The chart as a file">
      <Button icon={FileDown} onClick={saveCsv}>
        Save the chart as CSV
      </Button>
      <h2>With the cutter in your hand</h2>
      <ul className={styles.cautions}>
        {cautions.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}
