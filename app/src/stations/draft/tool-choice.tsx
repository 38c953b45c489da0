import { announce } from '../../store/notices.ts';
import { selectNothing } from '../../store/selection.ts';
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

/** Takes up a tool; who is about to draw lets go of what was chosen, so that the panel shows what drawing needs. */
function choose(tool: ToolName): void {
  takeUp(tool);
  if (tool !== 'adjust') selectNothing();
}

/** Named here for the list of keys; the canvas itself listens for them. */
const CANVAS_KEYS = (
  [
    ['← → ↑ ↓', 'Move the crosshair, what is chosen or the picture in hand; with Shift finely'],
    ['Tab', 'To the next place that catches; with Shift to the one before'],
    ['Enter', 'Put an end or a corner down; take a point up, and put it down'],
    ['Shift+Enter', 'Adjusting: add to what is chosen, or take away from it'],
    ['0 … 9', 'One end is down: type the length of the line'],
    ['Backspace', 'Take back the last corner of an outline; else delete what is in hand'],
    ['Escape', 'One step back; then the crosshair goes away; then what is chosen is let go'],
    ['Shift, press', 'Adjusting: add to what is chosen. Drawing: nothing pulls the ends from afar'],
  ] as const
).map(([keys, does]) => ({ keys, does, run: () => {}, when: () => false }));

/** The three things a hand does here, side by side over the canvas. */
export function ToolChoice() {
  const tool = useHand((hand) => hand.held.tool);
  // While the picture is in hand, none of them is.
  const resting = usePlacing((placing) => placing.kind === 'rest');
  useShortcuts('At the Draft station', [
    ...ORDER.map((name) => ({ keys: TOOLS[name].key, does: TOOLS[name].name, run: () => choose(name) })),
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
              className="pressed-through"
              name="tool"
              checked={resting && name === tool}
              onChange={() => choose(name)}
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
