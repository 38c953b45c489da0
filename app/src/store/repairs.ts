import type { Drawing, Repair } from '@seamwright/arrangement';
import { addSplit } from '@seamwright/drafting';
import { ok, type Result } from '@seamwright/geometry';

/** Adds the repair's lines to the drawing, all or none. */
export function applyRepair(drawing: Drawing, repair: Repair): Result<Drawing> {
  let result: Result<Drawing> = ok(drawing);
  for (const [from, to] of repair.splits) {
    if (!result.ok) return result;
    result = addSplit(result.value, { at: from }, { at: to });
  }
  return result;
}
