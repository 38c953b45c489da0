import { CheckBox } from '../../../ui/check-box.tsx';
import { adjustHand, useHand } from '../hand.ts';
import { TOOLS } from '../tools.ts';
import { DrawingPanel } from './drawing-panel.tsx';
import styles from './panel.module.css';

/** With nothing in hand: what the tool does, by pointer and by keys, and how it does it. */
export function ToolWords() {
  const tool = useHand((hand) => hand.held.tool);
  const { name, words, mouse, keys } = TOOLS[tool];
  return (
    <section className={styles.part} aria-label="In hand">
      <h2>{name}</h2>
      <p>{words}</p>
      {tool === 'split' && <DrawingPanel />}
      {tool === 'adjust' && <ChooseSeveral />}
      <p className={`${styles.hint} ${styles.fine}`}>
        {mouse} Wheel: zoom. Space or the middle button, and drag: move the view.
      </p>
      <p className={`${styles.hint} ${styles.fine}`}>{keys}</p>
      <p className={`${styles.hint} ${styles.coarse}`}>Two fingers move the view and zoom.</p>
    </section>
  );
}

/** For hands that have no Shift key to hold down. */
function ChooseSeveral() {
  const adds = useHand((hand) => hand.adds);
  return (
    <CheckBox
      label="Choose several: each press adds or takes away"
      checked={adds}
      onChange={(isChecked) => adjustHand({ adds: isChecked })}
    />
  );
}
