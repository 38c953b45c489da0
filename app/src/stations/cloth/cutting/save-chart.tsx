import { CUTTING_CAUTIONS, type CutOut, chartCsv, layerCautions } from '@seamwright/cloth';
import { FileDown } from 'lucide-react';
import { download, fileName } from '../../../keeping/download.ts';
import { announce } from '../../../store/notices.ts';
import { type CuttingQuestion, useCutting } from '../../../study/cut-out.ts';
import { Button } from '../../../ui/button.tsx';
import { useOutput } from '../../paper/outputs/under-way.ts';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';
import { chartFile, saveChartPdf } from './save-chart-pdf.ts';

/** The chart as a file, and what to mind with the cutter in hand. */
export function SaveChart({
  answer,
  question,
}: {
  readonly answer: CutOut;
  readonly question: CuttingQuestion;
}) {
  const busy = useOutput(({ underWay }) => underWay !== null);
  const isDue = useCutting((cutting) => cutting.isDue);
  const saveCsv = () => {
    const name = fileName(chartFile(question), '.csv');
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
      <Button icon={FileDown} waits={isDue} onClick={saveCsv}>
        Save the chart as CSV
      </Button>
      <Button icon={FileDown} waits={busy || isDue} onClick={() => void saveChartPdf(question, answer)}>
        Save the chart as PDF
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
