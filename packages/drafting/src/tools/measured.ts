import { add, dot, normalize, type Point, scale, subtract } from '@seamwright/geometry';
import { placeByMeasure, toward } from '../angles.ts';
import { placedAt } from '../place-at.ts';
import { gridOf } from '../snapping/grid.ts';
import { alongRay, type GuideOptions, rayOnLine } from '../snapping/guides.ts';
import type { Snap } from '../snapping/snap.ts';
import { snapScene } from '../snapping/snap-scene.ts';
import type { Pointing, ToolContext } from './tool.ts';

/**
 * The other end of a line that must have a typed length, angle or both: as near as that allows to what the pointer
 * caught. With an angle alone it ends on a line near the pointer, else where the grid crosses it.
 */
export function measured(start: Snap, found: Snap, event: Pointing, context: ToolContext): Snap {
  const { length, angle } = context.measure ?? {};
  if (angle !== undefined && length !== undefined)
    return typed(placeByMeasure(start.at, length, angle), context);
  if (length !== undefined) {
    const way = normalize(subtract(found.at, start.at));
    // Where the pointer is on the first end, no way is known yet.
    if (way.x === 0 && way.y === 0) return found;
    return typed(add(start.at, scale(way, length)), context);
  }
  return angle === undefined ? found : atAngle(start, angle, event, context);
}

const typed = (at: Point, { drawing }: ToolContext): Snap => ({
  kind: 'free',
  reason: 'as typed',
  ...placedAt(drawing, at),
});

function atAngle(start: Snap, angle: number, event: Pointing, context: ToolContext): Snap {
  const scene = snapScene(context.drawing);
  const direction = toward(angle);
  const along = dot(direction, subtract(event.at, start.at));
  const foot = add(start.at, scale(direction, along));
  if (along === 0) return typed(foot, context);
  const options: GuideOptions = {
    from: start.at,
    pointer: foot,
    radius: event.reach,
    angleStep: 0,
    grid: event.exact ? null : gridOf(context.grid),
    wanted: () => false,
  };
  const ray = {
    kind: 'angle' as const,
    reason: 'at the typed angle',
    // Either way from the first end.
    direction: along < 0 ? scale(direction, -1) : direction,
  };
  const place = rayOnLine([ray], scene.lines, options) ?? alongRay(scene, [ray], options);
  return place === undefined ? typed(foot, context) : { ...place, ...placedAt(context.drawing, place.at) };
}
