import type { Drawing, Repair } from '@seamwright/arrangement';
import { addSplit, placeExactly, snapScene } from '@seamwright/drafting';
import { ok, type Result } from '@seamwright/geometry';

/** Adds the repair's lines to the drawing, all or none; their ends stay with the lines that they reach. */
export function applyRepair(drawing: Drawing, repair: Repair): Result<Drawing> {
  let result: Result<Drawing> = ok(drawing);
  for (const [from, to] of repair.splits) {
    if (!result.ok) return result;
    const scene = snapScene(result.value);
    result = addSplit(result.value, placeExactly(from, scene), placeExactly(to, scene));
  }
  return result;
}
