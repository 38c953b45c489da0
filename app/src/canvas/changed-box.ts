import type { Patch } from '@seamwright/arrangement';
import { type Box, boundingBox, type Polygon } from '@seamwright/geometry';
import type { Study } from '../study/study.ts';

/**
 * Round everything that two studies show differently of patches, their sections and names, inches; null where they show the
 * same. Patches are known again by their records.
 */
export function changedBox(before: Study, after: Study): Box | null {
  const changed: Patch[] = [];
  const left = new Map(before.arrangement?.patches.map((patch) => [before.records[patch.index]?.id, patch]));
  for (const patch of after.arrangement?.patches ?? []) {
    const id = after.records[patch.index]?.id;
    const old = left.get(id);
    left.delete(id);
    if (old === undefined) changed.push(patch);
    else if (!isShownAlike(before, old, after, patch)) changed.push(old, patch);
  }
  changed.push(...left.values());
  return changed.length === 0 ? null : boundingBox(changed.flatMap(({ polygon }) => polygon));
}

function isShownAlike(before: Study, old: Patch, after: Study, fresh: Patch): boolean {
  return (
    before.sectionOf[old.index] === after.sectionOf[fresh.index] &&
    before.names[old.index] === after.names[fresh.index] &&
    isSamePolygon(old.polygon, fresh.polygon) &&
    old.holes.length === 0 &&
    fresh.holes.length === 0
  );
}

const isSamePolygon = (a: Polygon, b: Polygon): boolean =>
  a.length === b.length && a.every(({ x, y }, i) => x === b[i]!.x && y === b[i]!.y);
