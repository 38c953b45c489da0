import { sentence } from '@seamwright/geometry';
import { CircleAlert } from 'lucide-react';
import { Button } from '../../ui/button.tsx';
import styles from './draft-station.module.css';
import { isBusy, send, useHand } from './hand.ts';
import { nextStep } from './held.ts';
import { drawAsTyped } from './typed-measure.ts';

/** Over the canvas's foot: why the last press did nothing, or what the next one does, and the way back. */
export function NextWords() {
  const held = useHand((hand) => hand.held);
  const problem = useHand((hand) => hand.problem);
  const busy = useHand(isBusy);
  const isTyped = useHand(({ measure }) => measure.length !== undefined || measure.angle !== undefined);
  const words = nextStep(held);
  if (problem === null && words === '') return null;
  return (
    <div className={styles.next} data-problem={problem !== null}>
      {problem === null ? (
        <span>{words}</span>
      ) : (
        <>
          <CircleAlert aria-hidden="true" size={18} />
          <span className={styles.why}>{sentence(problem)}</span>
        </>
      )}
      {busy && held.tool === 'split' && isTyped && (
        <Button look="quiet" onClick={drawAsTyped}>
          Draw it
        </Button>
      )}
      {busy && held.tool === 'outline' && (
        <Button look="quiet" onClick={() => send({ type: 'finish' })}>
          Close it
        </Button>
      )}
      {busy && (
        <Button look="quiet" onClick={() => send({ type: 'back' })}>
          {held.tool === 'outline' ? 'Take back a corner' : 'Take it back'}
        </Button>
      )}
    </div>
  );
}
