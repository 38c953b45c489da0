import { Button } from '../../ui/button.tsx';
import styles from './draft-station.module.css';
import { useHand } from './hand.ts';
import { drawOnce, timesOf } from './repeating.ts';

/** Below the tools while things are repeated, so that nobody wonders at it, and the way out of it. */
export function RepeatNote() {
  const symmetry = useHand((hand) => hand.symmetry);
  const times = timesOf(symmetry);
  if (times === 1) return null;
  return (
    <div className={styles.repeat}>
      <span>
        <span className={styles.lead}>Each line is </span>drawn {times} times
      </span>
      <Button look="quiet" title="Repeat nothing any more (R)" onClick={drawOnce}>
        Once
      </Button>
    </div>
  );
}
