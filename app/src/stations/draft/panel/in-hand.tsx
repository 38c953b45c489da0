import { drawnLines } from '@seamwright/drafting';
import { useEffect, useRef } from 'react';
import { currentBlock, currentDrawing, useWork } from '../../../store/work.ts';
import { chosenOf } from '../chosen.ts';
import { SeveralPatches } from '../views/several-patches.tsx';
import { LinePanel } from './line-panel.tsx';
import panel from './panel.module.css';
import { PatchPanel } from './patch-panel.tsx';
import { PointPanel } from './point-panel.tsx';
import { SeveralPanel } from './several-panel.tsx';
import { ToolWords } from './tool-words.tsx';

/** What belongs to what is in hand: a point, a line, a patch, several; with nothing in hand, what the tool does. */
export function InHand() {
  const chosen = useChosenPanel();
  const section = useShownFirst();
  return chosen === null ? (
    <ToolWords />
  ) : (
    <section ref={section} className={panel.inHand} aria-label="In hand">
      {chosen}
    </section>
  );
}

/** Brings the panel back to its beginning when something is taken in hand on the canvas; who is in the panel stays there. */
function useShownFirst() {
  const section = useRef<HTMLElement>(null);
  const selection = useWork((work) => work.selection);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is taken in hand is the occasion
  useEffect(() => {
    const aside = section.current?.closest('aside');
    if (aside?.contains(document.activeElement) === false) aside.scrollTo({ top: 0 });
  }, [selection]);
  return section;
}

function useChosenPanel() {
  const selection = useWork((work) => work.selection);
  const held = useWork(currentDrawing);
  const own = useWork((work) => currentBlock(work).drawing);
  if (selection.points.length + selection.lines.length > 1)
    return <SeveralPanel points={selection.points} lines={selection.lines} drawing={own} />;
  // While a point is dragged onto another it is gone from the drawing in hand, not yet from the block's.
  const drawing = selection.points.every((id) => held.points[id] !== undefined) ? held : own;
  const chosen = chosenOf(selection, drawing);
  if (chosen?.kind === 'point')
    return <PointPanel key={chosen.id} id={chosen.id} drawing={drawing} own={own} />;
  const line = chosen === undefined ? undefined : drawnLines(drawing).get(chosen.id);
  if (line !== undefined) return <LinePanel key={line.id} line={line} drawing={drawing} own={own} />;
  const [patch, ...others] = selection.patches;
  if (others.length > 0) return <SeveralPatches ids={selection.patches} />;
  return patch === undefined ? null : <PatchPanel key={patch} id={patch} />;
}
