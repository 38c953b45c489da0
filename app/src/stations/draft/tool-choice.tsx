import { announce } from '../../store/notices.ts';
import { setting, useSettings } from '../../store/settings.ts';
import { useShortcuts } from '../../ui/shortcuts.ts';
import { catchKind, holdEnds, isCaught } from './catching.ts';
import { chooseAllLines } from './chosen.ts';
import styles from './draft-station.module.css';
import { takeUp, useHand } from './hand.ts';
import type { ToolName } from './held.ts';
import { drawOnce, isRepeated } from './repeating.ts';
import { TOOLS } from './tools.ts';
import { usePlacing } from './tracing/placing.ts';

const ORDER = Object.keys(TOOLS) as ToolName[];

function switchGrid(): void {
  const toGrid = !isCaught('grid');
  catchKind('grid', toGrid);
  announce(toGrid ? 'Ends keep to the grid' : 'Ends do not keep to the grid');
}

function switchEnds(): void {
  const held = useSettings.getState().ends === 'run';
  holdEnds(held);
  announce(held ? 'Ends stay where they are put' : 'Ends run to the nearest line or the edge');
}

function switchChain(): void {
  const chain = !useSettings.getState().chain;
  setting({ chain });
  announce(chain ? 'Each line goes on from the last' : 'Each line begins anew');
}

/** Named here for the list of keys; the canvas itself listens for them. */
const CANVAS_KEYS = (
  [
    ['ArrowRight', 'Move the crosshair over the grid (any arrow)'],
    ['Shift+ArrowRight', 'Move it finely'],
    ['ArrowLeft', 'Adjusting, something chosen, no crosshair: move what is chosen (with Shift: finely)'],
    ['0 … 9', 'One end is down: type the length of the line'],
    ['Tab', 'To the next place that catches'],
    ['Shift+Tab', 'To the place before'],
    ['Enter', 'Put an end down; take a point up'],
    ['Shift+Enter', 'Add to what is chosen, or take away from it'],
    ['Escape', 'One step back; then the crosshair goes away'],
  ] as const
).map(([keys, does]) => ({ keys, does, run: () => {}, when: () => false }));

/** The three things a hand does here, side by side over the canvas. */
export function ToolChoice() {
  const tool = useHand((hand) => hand.held.tool);
  // While the picture is in hand, none of them is.
  const resting = usePlacing((placing) => placing.kind === 'rest');
  useShortcuts('At the Draft station', [
    ...ORDER.map((name) => ({ keys: TOOLS[name].key, does: TOOLS[name].name, run: () => takeUp(name) })),
    { keys: 'g', does: 'Ends keep to the grid, or not', run: switchGrid },
    { keys: 'h', does: 'Ends stay where they are put, or run on', run: switchEnds },
    { keys: 'c', does: 'Each line goes on from the last, or begins anew', run: switchChain },
    { keys: 'r', does: 'Repeat nothing any more', run: drawOnce, when: isRepeated },
    { keys: 'Mod+a', does: 'Choose all lines', run: chooseAllLines },
  ]);
  useShortcuts('On the drawing, when it has the focus', CANVAS_KEYS);
  return (
    <fieldset className={styles.tools}>
      <legend className="heard">What to do on the drawing</legend>
      {ORDER.map((name) => {
        const { icon: Icon, name: words, key } = TOOLS[name];
        return (
          <label key={name} className={styles.tool} title={`${words} (${key.toUpperCase()})`}>
            <input
              type="radio"
              name="tool"
              checked={resting && name === tool}
              onChange={() => takeUp(name)}
            />
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
