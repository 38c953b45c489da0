import type { SizedNeed } from '@seamwright/cloth';
import { boundingBox, formatLength, type LengthUnit, MM_PER_INCH, sentence } from '@seamwright/geometry';
import { useEffect, useMemo } from 'react';
import { corners } from '../../../canvas/bounds.ts';
import { useWork } from '../../../store/work.ts';
import { type CurveSubject, curveAsked } from '../../../study/look-ahead-asked.ts';
import { Button } from '../../../ui/button.tsx';
import { widthWords } from '../cutting/looked-at.tsx';
import styles from './ahead.module.css';
import type { AheadProps } from './ahead-props.ts';
import { CurveChart } from './curve-chart.tsx';
import { boughtOf, boughtText, cliffsOf, cliffWords, widthsAround } from './curve-words.ts';

/** Blocks wider than this are compared in twice the steps. Inches. */
const WIDE = 16;

/** So many cliffs are told, the highest. */
const MOST_TOLD = 4;

/** What blocks somewhat smaller or larger would need. */
export function CurvePart({ question, block }: AheadProps) {
  const unit = useWork((work) => work.history.present.unit);
  const subject = useMemo((): CurveSubject => {
    const { study, cloths, cut, plan } = question;
    const { minX, maxX } = boundingBox(corners(study.drawing));
    const width = maxX - minX;
    const now = width * block.scale;
    const step = (unit === 'in' ? 0.25 : 5 / MM_PER_INCH) * (now > WIDE ? 2 : 1);
    return { block, cloths, cut, plan, width, widths: widthsAround(now, step) };
  }, [question, block, unit]);
  useEffect(() => curveAsked.forget, []);
  const { of, answer } = curveAsked.useAsked();
  const isBusy = of !== null && answer === null;
  const isStale = of !== null && of !== subject;
  return (
    <>
      {question.blocks.length > 1 && <p>For this block alone, {widthWords(block, unit)} now.</p>}
      {isBusy ? (
        <div className={styles.row}>
          <p role="status">Working out {of.widths.length} sizes …</p>
          <Button onClick={curveAsked.forget}>Stop</Button>
        </div>
      ) : (
        (answer === null || isStale) && (
          <>
            {isStale && <p>What is cut has changed since.</p>}
            <Button className={styles.press} onClick={() => curveAsked.ask(subject)}>
              Compare with other sizes
            </Button>
          </>
        )
      )}
      {answer !== null && !answer.ok && <p role="alert">{sentence(answer.problem)}</p>}
      {answer?.ok === true && !isStale && (
        <Curve needs={answer.value} now={subject.width * subject.block.scale} unit={unit} />
      )}
    </>
  );
}

interface CurveProps {
  readonly needs: readonly SizedNeed[];
  /** The present finished width, inches. */
  readonly now: number;
  readonly unit: LengthUnit;
}

function Curve({ needs, now, unit }: CurveProps) {
  const rise = ({ before, past }: { before: SizedNeed; past: SizedNeed }) =>
    boughtOf(past, unit) - boughtOf(before, unit);
  const cliffs = cliffsOf(needs, unit);
  const told = [...cliffs]
    .sort((p, q) => rise(q) - rise(p))
    .slice(0, MOST_TOLD)
    .sort((p, q) => p.past.size - q.past.size);
  return (
    <>
      <CurveChart needs={needs} cliffs={cliffs.map(({ past }) => past)} now={now} unit={unit} />
      <div role="status">
        {told.length === 0 ? (
          <p>No size is just past one that needs much less.</p>
        ) : (
          told.map((cliff) => <p key={cliff.past.size}>{cliffWords(cliff, unit)}</p>)
        )}
      </div>
      <details className={styles.joins}>
        <summary>As a table</summary>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Finished width</th>
              <th scope="col">Buy, all fabrics</th>
            </tr>
          </thead>
          <tbody>
            {needs.map((need) => (
              <tr key={need.size}>
                <th scope="row">{formatLength(need.size, unit)}</th>
                <td>
                  {boughtText(boughtOf(need, unit), unit)}
                  {need.size === now && ', as it is now'}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}
