import { announce } from '../../store/notices.ts';
import { useShortcuts } from '../../ui/shortcuts.ts';
import styles from './draft-station.module.css';
import { type ToolName, takeUp, useHand } from './hand.ts';
import { TOOLS } from './tools.ts';

const ORDER = Object.keys(TOOLS) as ToolName[];

function switchGrid(): void {
  const toGrid = !useHand.getState().toGrid;
  useHand.setState({ toGrid });
  announce(toGrid ? 'Ends keep to the grid' : 'Ends do not keep to the grid');
}

/** Named here for the list of keys; the canvas itself listens for them. */
const CANVAS_KEYS = (
  [
    ['ArrowRight', 'Move the crosshair over the grid (any arrow)'],
    ['Shift+ArrowRight', 'Move it finely'],
    ['Tab', 'To the next place that catches'],
    ['Shift+Tab', 'To the place before'],
    ['Enter', 'Put an end down; take a point up'],
    ['Escape', 'One step back; then the crosshair goes away'],
  ] as const
).map(([keys, does]) => ({ keys, does, run: () => {}, when: () => false }));

/** The three things a hand does here, side by side over the canvas. */
export function ToolChoice() {
  const tool = useHand((hand) => hand.held.tool);
  useShortcuts('At the Draft station', [
    ...ORDER.map((name) => ({ keys: TOOLS[name].key, does: TOOLS[name].name, run: () => takeUp(name) })),
    { keys: 'g', does: 'Ends keep to the grid, or not', run: switchGrid },
  ]);
  useShortcuts('On the drawing, when it has the focus', CANVAS_KEYS);
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
