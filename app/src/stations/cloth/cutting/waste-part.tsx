import { type CutOut, patchNeeds, wasteOf, wasteText } from '@seamwright/cloth';
import { useMemo } from 'react';
import type { CuttingQuestion } from '../../../study/cut-out.ts';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';

interface WastePartProps {
  readonly question: CuttingQuestion;
  readonly answer: CutOut;
}

/** How much of one block's pieces is trimmed off; of the first size where several are asked for. */
export function WastePart({ question: { blocks, cut }, answer: { batches } }: WastePartProps) {
  const [block] = blocks;
  const { pieces } = batches[0]!;
  const words = useMemo(
    () => wasteText(wasteOf(pieces, patchNeeds(block.arrangement, block.plan, cut.allowance, block.scale))),
    [pieces, block, cut],
  );
  return <p className={`${station.part} ${styles.note}`}>{words}</p>;
}
