import { type CutOut, patchNeeds, wasteOf, wasteOfAll, wasteText } from '@seamwright/cloth';
import { useMemo } from 'react';
import { useWork } from '../../../store/work.ts';
import type { CuttingQuestion } from '../../../study/cut-out.ts';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';

interface WastePartProps {
  readonly question: CuttingQuestion;
  readonly answer: CutOut;
}

/** How much of all pieces is trimmed off. */
export function WastePart({ question: { blocks, cut }, answer: { batches } }: WastePartProps) {
  const unit = useWork((work) => work.history.present.unit);
  const words = useMemo(() => {
    const parts = batches.map(({ pieces, blocks: plain, mirrored }, i) => {
      const { arrangement, plan, scale } = blocks[i]!;
      const needs = patchNeeds(arrangement, plan, cut.allowance, scale);
      return { waste: wasteOf(pieces, needs), copies: plain + mirrored };
    });
    return wasteText(wasteOfAll(parts), unit);
  }, [batches, blocks, cut, unit]);
  return <p className={`${station.part} ${styles.note}`}>{words}</p>;
}
