import { useHand } from '../hand.ts';
import { TOOLS } from '../tools.ts';
import styles from './panel.module.css';

/** With nothing in hand: what the tool does, by pointer and by keys. */
export function ToolWords() {
  const tool = useHand((hand) => hand.held.tool);
  const { name, words, keys } = TOOLS[tool];
  return (
    <section className={styles.part} aria-label="In hand">
      <h2>{name}</h2>
      <p>{words}</p>
      <p className={styles.hint}>{keys}</p>
    </section>
  );
}
