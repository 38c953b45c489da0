import { shownRows } from '@seamwright/cloth';
import { sentence } from '@seamwright/geometry';
import { useEffect, useMemo } from 'react';
import { useCuttingHabits } from '../../../store/cutting-habits.ts';
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
import { useLookedAt } from './looked-at.tsx';
import { patchesByName } from './patches-by-name.ts';
import { SaveChart } from './save-chart.tsx';
import { WastePart } from './waste-part.tsx';

/** What to cut for the open block or for all, and what to buy. */
export function CuttingPanel() {
  useEffect(startCuttingOut, []);
  const worked = useCutting((cutting) => cutting.answer);
  const bySection = useCuttingHabits((habits) => habits.bySection);
  const answer = useMemo(
    () => (worked === null ? null : { ...worked, rows: shownRows(worked, bySection) }),
    [worked, bySection],
  );
  const problem = useCutting((cutting) => cutting.problem);
  const question = useCutting((cutting) => cutting.question);
  const block = useLookedAt(question);
  const several = useWork((work) => work.history.present.blocks.length > 1);
  const patchOf = useMemo(
    () => (question === null || answer === null ? null : patchesByName(question, answer)),
    [question, answer],
  );
  const nothing = question !== null && question.blocks.length === 0;
  const isOpenStuck = question !== null && question.open.length === 0;
  return (
    <>
      {question !== null && (several || !isOpenStuck) && <BlocksToSew question={question} />}
      {problem !== null && (
        <p className={styles.part} role="alert">
          {sentence(problem)}
        </p>
      )}
      {nothing ? (
        <p className={styles.part}>
          {isOpenStuck
            ? 'There is nothing to cut yet: the block has to be one that can be sewn. Order says what stands in the way.'
            : 'There is nothing to cut: say above how many of a block are sewn.'}
        </p>
      ) : (
        patchOf !== null && (
          <>
            {answer!.plans.map((plan) => (
              <Chart
                key={plan.cloth.id}
                plan={plan}
                rows={answer!.rows}
                question={question!}
                patchOf={patchOf}
              />
            ))}
            <WastePart question={question!} answer={answer!} />
            <SaveChart answer={answer!} question={question!} />
          </>
        )
      )}
      {block !== undefined && (
        <>
          <Foldable id="show-through" title="Dark under light" more="">
            <ShadesPart question={question!} block={block} />
          </Foldable>
          <Foldable id="bulk" title="Layers and pressing" more="">
            <BulkPart question={question!} block={block} />
          </Foldable>
          <Foldable id="other sizes" title="Other sizes of the block" more="">
            <CurvePart question={question!} block={block} />
          </Foldable>
        </>
      )}
      <Foldable id="cutting habits" title="How you cut and buy" more="">
        <HabitsPart />
      </Foldable>
    </>
  );
}
