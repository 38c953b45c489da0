import { changeSize, MOST_BLOCKS } from '../../../store/printing.ts';
import { currentPrinting, useWork } from '../../../store/work.ts';
import { CountField } from '../../../ui/count-field.tsx';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';

/** For how many blocks all counts below are; where a patch's piece is seen. */
export function BlocksToSew() {
  const sizes = useWork((work) => currentPrinting(work).sizes);
  const [only] = sizes;
  const single = sizes.length === 1 && (only!.mirrored ?? 0) === 0;
  return (
    <div className={station.part}>
      {single ? (
        <CountField
          label="Blocks to sew"
          value={only!.copies}
          least={1}
          most={MOST_BLOCKS}
          onChange={(copies) => changeSize(0, { copies })}
        />
      ) : (
        <p>Cut for all the sizes and mirrored blocks that are asked for at Paper.</p>
      )}
      <p className={styles.note}>
        Press a patch, or its name below, to see its piece on the block: laid, sewn and flipped.
      </p>
    </div>
  );
}
