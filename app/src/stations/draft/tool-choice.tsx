import { useShortcuts } from '../../ui/shortcuts.ts';
import styles from './draft-station.module.css';
import { type ToolName, takeUp, useHand } from './hand.ts';
import { TOOLS } from './tools.ts';

const ORDER = Object.keys(TOOLS) as ToolName[];

/** The three things a hand does here, side by side over the canvas. */
export function ToolChoice() {
  const tool = useHand((hand) => hand.held.tool);
  useShortcuts(
    'At the Draft station',
    ORDER.map((name) => ({ keys: TOOLS[name].key, does: TOOLS[name].name, run: () => takeUp(name) })),
  );
  return (
    <fieldset className={styles.tools}>
      <legend className="heard">What to do on the drawing</legend>
      {ORDER.map((name) => {
        const { icon: Icon, name: words, key } = TOOLS[name];
        return (
          <label key={name} className={styles.tool} title={`${words} (${key.toUpperCase()})`}>
            <input type="radio" name="tool" checked={name === tool} onChange={() => takeUp(name)} />
            <span>
              <Icon aria-hidden="true" size={18} strokeWidth={1.75} />
              {words}
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
