import { LEAST_SIZE_RANGE, setting, useSettings } from '../../store/settings.ts';
import { LengthField } from '../../ui/length-field.tsx';
import styles from './order-station.module.css';

/** How small patches may come out on paper before it is worth a caution. */
export function LeastSize() {
  const leastSize = useSettings((settings) => settings.leastSize);
  return (
    <div className={styles.inline}>
      <LengthField
        label="Smallest patch on paper"
        value={leastSize}
        range={LEAST_SIZE_RANGE}
        onChange={(inches) => setting({ leastSize: inches })}
      />
    </div>
  );
}
