import type { Point } from '@seamwright/geometry';
import { currentBlock, useWork } from '../../../store/work.ts';
import { originOf } from '../../../ui/measures.ts';
import styles from './panel.module.css';
import { PlaceField } from './place-field.tsx';

interface PlaceFieldsProps {
  readonly at: Point;
  /** Whose place it is, where that is not said above already, e.g. `First end`. */
  readonly of?: string;
  /** A sentence that comes back says why it cannot be there, and the field says it. */
  readonly onChange: ((at: Point) => void) | ((at: Point) => string | undefined);
}

/** The two coordinates of a place, as one measures on the table: from the block's left, and from its top. */
export function PlaceFields({ at, of, onChange }: PlaceFieldsProps) {
  const block = useWork(currentBlock);
  const origin = originOf(block.drawing);
  const fields = (
    <div className={styles.pair}>
      <PlaceField
        label="From the left"
        value={at.x - origin.x}
        onChange={(x) => onChange({ x: x + origin.x, y: at.y })}
      />
      <PlaceField
        label="From the top"
        value={at.y - origin.y}
        onChange={(y) => onChange({ x: at.x, y: y + origin.y })}
      />
    </div>
  );
  return of === undefined ? (
    fields
  ) : (
    <fieldset className={styles.of}>
      <legend>{of}</legend>
      {fields}
    </fieldset>
  );
}
