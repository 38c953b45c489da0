import { boundingBox, formatLength, type LengthUnit } from '@seamwright/geometry';
import type { FinishedSize } from '@seamwright/pages';
import { corners } from '../../../canvas/bounds.ts';
import { changeSize, MOST_BLOCKS } from '../../../store/printing.ts';
import { currentDrawing, currentPrinting, useWork } from '../../../store/work.ts';
import { CountField } from '../../../ui/count-field.tsx';
import { counted } from '../../../ui/plural.ts';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';

/** `12 blocks, 6 in wide, and 4 mirrored`. */
function sizeWords({ scale, copies, mirrored = 0 }: FinishedSize, width: number, unit: LengthUnit): string {
  const size = formatLength(width * scale, unit);
  if (copies === 0) return `${counted(mirrored, 'mirrored block')}, ${size} wide`;
  return `${counted(copies, 'block')}, ${size} wide${mirrored === 0 ? '' : `, and ${mirrored} mirrored`}`;
}

/** For how many blocks all counts below are; where a patch's piece is seen. */
export function BlocksToSew() {
  const sizes = useWork((work) => currentPrinting(work).sizes);
  const unit = useWork((work) => work.history.present.unit);
  const { minX, maxX } = boundingBox(corners(useWork(currentDrawing)));
  const drawnWidth = maxX - minX;
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
        <>
          <p>Cut, as asked for at Paper, for</p>
          <ul className={styles.sizes}>
            {sizes.map((size) => (
              <li key={`${size.scale} ${size.copies} ${size.mirrored}`}>
                {sizeWords(size, drawnWidth, unit)}
              </li>
            ))}
          </ul>
        </>
      )}
      <p className={styles.note}>
        Press a patch, or its name below, to see its piece on the block: laid, sewn and flipped.
      </p>
    </div>
  );
}
