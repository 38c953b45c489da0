import { askOfSheets } from '../../../store/printing.ts';
import { currentPrinting, useWork } from '../../../store/work.ts';
import { CountField } from '../../../ui/count-field.tsx';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';

/** For how many blocks all counts below are; where a patch's piece is seen. */
export function BlocksToSew() {
  const copies = useWork((work) => currentPrinting(work).copies);
  return (
    <div className={station.part}>
      <CountField
        label="Blocks to sew"
        value={copies}
        least={1}
        most={9999}
        onChange={(count) => askOfSheets({ copies: count })}
      />
      <p className={styles.note}>
        Press a patch, or its name below, to see its piece on the block: laid, sewn and flipped.
      </p>
    </div>
  );
}
