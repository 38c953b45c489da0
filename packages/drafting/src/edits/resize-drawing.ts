import type { Drawing } from '@seamwright/arrangement';
import { boundingBox, type Result } from '@seamwright/geometry';
import { checkLengths, checkOutline, checkReach, outlineOf, passes } from '../checks.ts';
import { keepSoundFacts, keepTrueFacts, withOn } from '../facts.ts';
import { settle } from '../settle.ts';
import { checkSizes, sizeOf } from '../size.ts';

/** Both sides, or one: the other then follows in proportion. Inches. */
export type NewSize =
  | { readonly width: number; readonly height: number }
  | { readonly width: number; readonly height?: never }
  | { readonly width?: never; readonly height: number };

/**
 * Stretches the drawing so that the rectangle round its outline has the given finished size; the rectangle's top
 * left corner stays. All facts stay true: lines stay straight and shares of the way along them stay the same. Points that
 * a file has a little beside the lines that they are on would move away from them, and are put there.
 *
 * Refused: sizes that no block has, also of the side that follows; sizes so small that lines lose their length, or so
 * large that lines which run past the outline end out of reach.
 */
export function resizeDrawing(drawing: Drawing, size: NewSize): Result<Drawing> {
  const checked = checkSizes({
    ...(size.width !== undefined && { width: size.width }),
    ...(size.height !== undefined && { height: size.height }),
  });
  if (!checked.ok) return checked;
  const outline = outlineOf(drawing);
  const { minX, minY } = boundingBox(outline);
  const old = sizeOf(outline);
  const alongX = (size.width ?? old.width * (size.height / old.height)) / old.width;
  const alongY = (size.height ?? old.height * alongX) / old.height;

  const points = Object.fromEntries(
    Object.values(drawing.points).map((point) => {
      const x = minX + (point.x - minX) * alongX;
      const y = minY + (point.y - minY) * alongY;
      return [point.id, withOn({ ...point, x, y }, point.on ?? [])];
    }),
  );
  return passes(onTheirLines({ ...drawing, points }), checkOutline, checkReach, checkLengths(drawing));
}

/** The drawing itself where all facts are true to the coordinates. */
function onTheirLines(drawing: Drawing): Drawing {
  const points = Object.values(drawing.points);
  const factsKept = keepTrueFacts(drawing, new Set(points.map(({ id }) => id)));
  if (points.every(({ id, on }) => on?.length === factsKept.points[id]!.on?.length)) return drawing;
  const sound = keepSoundFacts(drawing);
  const free = Object.values(sound.points).filter(({ on }) => on === undefined);
  return settle(drawing, sound, new Set(free.map(({ id }) => id)));
}
