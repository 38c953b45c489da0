import { sentence } from '@seamwright/geometry';
import { useEffect } from 'react';
import { useWork } from '../../../store/work.ts';
import { startCuttingOut, useCutting } from '../../../study/cut-out.ts';
import { Foldable } from '../../../ui/foldable.tsx';
import { BulkPart } from '../ahead/bulk-part.tsx';
import { CurvePart } from '../ahead/curve-part.tsx';
import { ShadesPart } from '../ahead/shades-part.tsx';
import styles from '../cloth-station.module.css';
import { BlocksToSew } from './blocks-to-sew.tsx';
import { Chart } from './chart.tsx';
import { HabitsPart } from './habits-part.tsx';
import { SaveChart } from './save-chart.tsx';
import { WastePart } from './waste-part.tsx';

/** What to cut for the open block, and what to buy. */
export function CuttingPanel() {
  useEffect(startCuttingOut, []);
  const answer = useCutting((cutting) => cutting.answer);
  const problem = useCutting((cutting) => cutting.problem);
  const question = useCutting((cutting) => cutting.question);
  const unsewable = useWork(({ study }) => study !== null && (study.plan?.sections.length ?? 0) === 0);
  return (
    <>
      {unsewable ? (
        <p className={styles.part}>
          There is nothing to cut yet: the block has to be one that can be sewn. Order says what stands in the
          way.
        </p>
      ) : (
        <>
          {problem !== null && (
            <p className={styles.part} role="alert">
              {sentence(problem)}
            </p>
          )}
          {answer !== null && question !== null && (
            <>
              <BlocksToSew />
              {answer.plans.map((plan) => (
                <Chart key={plan.cloth.id} plan={plan} rows={answer.rows} question={question} />
              ))}
              <WastePart question={question} answer={answer} />
              <SaveChart answer={answer} question={question} />
            </>
          )}
        </>
      )}
      {!unsewable && question !== null && (
        <>
          <Foldable id="show-through" title="Dark under light" more="">
            <ShadesPart question={question} />
          </Foldable>
          <Foldable id="bulk" title="Layers and pressing" more="">
            <BulkPart question={question} />
          </Foldable>
          <Foldable id="other sizes" title="Other sizes of the block" more="">
            <CurvePart question={question} />
          </Foldable>
        </>
      )}
      <Foldable id="cutting habits" title="How you cut and buy" more="">
        <HabitsPart />
      </Foldable>
    </>
  );
}
