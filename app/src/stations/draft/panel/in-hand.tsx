import { drawnLines } from '@seamwright/drafting';
import { currentBlock, currentDrawing, useWork } from '../../../store/work.ts';
import { chosenOf } from '../chosen.ts';
import { LinePanel } from './line-panel.tsx';
import { PatchPanel } from './patch-panel.tsx';
import { PointPanel } from './point-panel.tsx';
import { ToolWords } from './tool-words.tsx';

/** What belongs to the thing in hand: a point, a line, a patch; with nothing in hand, what the tool does. */
export function InHand() {
  const selection = useWork((work) => work.selection);
  const held = useWork(currentDrawing);
  const own = useWork((work) => currentBlock(work).drawing);
  // While a point is dragged onto another it is gone from the drawing in hand, not yet from the block's.
  const drawing = selection.points.every((id) => held.points[id] !== undefined) ? held : own;
  const chosen = chosenOf(selection, drawing);
  const patch = selection.patches[0];
  if (chosen?.kind === 'point') return <PointPanel key={chosen.id} id={chosen.id} drawing={drawing} />;
  const line = chosen === undefined ? undefined : drawnLines(drawing).get(chosen.id);
  if (line !== undefined) return <LinePanel key={line.id} line={line} drawing={drawing} />;
  if (patch !== undefined) return <PatchPanel key={patch} id={patch} />;
  return <ToolWords />;
}
