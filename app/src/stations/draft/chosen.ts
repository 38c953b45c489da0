import type { Drawing } from '@seamwright/arrangement';
import { drawnLines, type Pick } from '@seamwright/drafting';
import { announce } from '../../store/notices.ts';
import { chooseParts, selectNothing } from '../../store/selection.ts';
import { currentBlock, type Selection, useWork } from '../../store/work.ts';
import { counted } from '../../ui/plural.ts';
import { takeUp } from './hand.ts';

/** The one point or line that is in hand, if it is still there. */
export function chosenOf({ points, lines }: Selection, drawing: Drawing): Pick | undefined {
  const [point, line] = [points[0], lines[0]];
  if (point !== undefined && drawing.points[point] !== undefined) return { kind: 'point', id: point };
  return line === undefined ? undefined : { kind: 'line', id: line };
}

/** Takes a point or a line in hand. */
export function choose(chosen: Pick | undefined): void {
  if (chosen === undefined) selectNothing();
  else chooseParts(ofOne(chosen));
}

const ofOne = ({ kind, id }: Pick) =>
  kind === 'point' ? { points: [id], lines: [] } : { points: [], lines: [id] };

/** Takes all lines in hand that were drawn; the edge stays. */
export function chooseAllLines(): void {
  const { drawing } = currentBlock(useWork.getState());
  const lines = [...drawnLines(drawing).values()].flatMap(({ id, kind }) => (kind === 'split' ? [id] : []));
  takeUp('adjust');
  chooseParts({ points: [], lines });
  announce(lines.length === 0 ? 'No lines are drawn yet' : `${counted(lines.length, 'line')} chosen`);
}
