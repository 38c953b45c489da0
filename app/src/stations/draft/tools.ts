import { type LucideIcon, Move, PencilLine, Pentagon } from 'lucide-react';
import type { ToolName } from './held.ts';

interface ToolFace {
  readonly name: string;
  readonly icon: LucideIcon;
  /** The letter that takes it up. */
  readonly key: string;
  readonly words: string;
  /** With a mouse, and with keys. */
  readonly mouse: string;
  readonly keys: string;
}

/** How the tools are shown, in the order in which they are offered. */
export const TOOLS: Readonly<Record<ToolName, ToolFace>> = {
  split: {
    name: 'Draw lines',
    icon: PencilLine,
    key: 'd',
    words: 'Press where the line begins and draw it out, or press once at each end.',
    mouse: 'Hold Shift, and nothing pulls the ends from afar.',
    keys: 'By keys: arrows move the crosshair (Shift: finely), Tab goes to the next place that catches, Enter puts an end down, numbers go to its length, Escape takes it back.',
  },
  adjust: {
    name: 'Adjust',
    icon: Move,
    key: 'a',
    words:
      'Drag ends, corners and lines, or a frame round several. Press on a point, a line or a patch to see what can be done with it.',
    mouse: 'Hold Shift, and nothing pulls a point from afar; a press with it adds to what is chosen.',
    keys: 'By keys: arrows and Tab move the crosshair, Enter takes up a point and puts it down, Shift+Enter adds to what is chosen. Escape puts the crosshair away: then arrows move what is chosen. Delete deletes.',
  },
  outline: {
    name: 'New outline',
    icon: Pentagon,
    key: 'o',
    words: 'Press at each corner of the new outline, and on the first one again to close it. The lines stay.',
    mouse: 'Hold Shift, and nothing pulls the corners from afar.',
    keys: 'By keys: arrows and Tab move the crosshair, Enter puts a corner down, Enter on it once more closes the outline, Escape takes the last corner back.',
  },
};
