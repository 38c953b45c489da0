import type { Drawing, Repair } from '@seamwright/arrangement';
import { addSplit, drawnLines, placeExactly, snapScene } from '@seamwright/drafting';
import { ok, type Result, type Segment } from '@seamwright/geometry';
import { findingWords } from '../study/finding-words.ts';
import { change } from './changes.ts';
import { announce, warn } from './notices.ts';
import { currentBlock, useWork } from './work.ts';

/** The drawing after a repair; one that only names lines to add has them added, all or none. */
export function repairedDrawing(drawing: Drawing, repair: Repair): Result<Drawing> {
  if (repair.drawing !== undefined) return ok(repair.drawing);
  let result: Result<Drawing> = ok(drawing);
  for (const [from, to] of repair.splits) {
    if (!result.ok) return result;
    const scene = snapScene(result.value);
    result = addSplit(result.value, placeExactly(from, scene), placeExactly(to, scene));
  }
  return result;
}

/**
 * Applies a repair that was found for a drawing: one step for undo. Where the drawing has changed since, nothing is done,
 * and a sentence says so.
 */
export function applyRepair(found: Drawing, repair: Repair): void {
  if (currentBlock(useWork.getState()).drawing !== found) {
    warn('The drawing has changed since this repair was found. Look at the findings again.');
    return;
  }
  const words = findingWords(repair.message, useWork.getState().history.present.unit);
  const result = change(`Repair: ${words}`, (drawing) => repairedDrawing(drawing, repair));
  if (result.ok) announce(`Repaired: ${words}`);
}

/** What a repair changes in the drawing, for showing it beforehand. */
export function changesOf(drawing: Drawing, repair: Repair): { added: Segment[]; removed: Segment[] } {
  if (repair.splits.length > 0 || repair.drawing === undefined) {
    return { added: repair.splits.map(([a, b]) => ({ a, b })), removed: [] };
  }
  return {
    added: linesOnlyIn(repair.drawing, drawing),
    removed: linesOnlyIn(drawing, repair.drawing),
  };
}

/** The lines of one drawing that are not, or not there, in another. */
function linesOnlyIn(drawing: Drawing, other: Drawing): Segment[] {
  const others = drawnLines(other);
  return [...drawnLines(drawing).values()].flatMap(({ id, from, to }) => {
    const same = others.get(id);
    const unchanged = same !== undefined && samePlace(same.from, from) && samePlace(same.to, to);
    return unchanged ? [] : [{ a: from, b: to }];
  });
}

const samePlace = (a: { x: number; y: number }, b: { x: number; y: number }): boolean =>
  a.x === b.x && a.y === b.y;
