import type { Drawing } from '@seamwright/arrangement';
import type { Box, Point } from '@seamwright/geometry';
import type { Parts } from '../edits/index.ts';
import type { Pick } from './tool.ts';

/** What is chosen: one thing, or two and more. */
export interface Chosen {
  readonly chosen?: Pick;
  readonly many?: Parts;
}

export const NONE_CHOSEN: Chosen = {};

/** What is chosen, as parts. */
export function chosenParts({ chosen, many }: Chosen): Parts {
  if (many !== undefined) return many;
  return {
    points: chosen?.kind === 'point' ? [chosen.id] : [],
    lines: chosen?.kind === 'line' ? [chosen.id] : [],
  };
}

/** Parts as what is chosen. */
export function ofParts(parts: Parts): Chosen {
  const { points, lines } = parts;
  if (points.length + lines.length > 1) return { many: { points, lines } };
  if (points[0] !== undefined) return { chosen: { kind: 'point', id: points[0] } };
  return lines[0] === undefined ? NONE_CHOSEN : { chosen: { kind: 'line', id: lines[0] } };
}

export function isChosen(chosen: Chosen, { kind, id }: Pick): boolean {
  const { points, lines } = chosenParts(chosen);
  return (kind === 'point' ? points : lines).includes(id);
}

/** With one thing more, or less where it was chosen. */
export function toggled(chosen: Chosen, on: Pick): Chosen {
  const { points, lines } = chosenParts(chosen);
  const changed = (ids: readonly string[]) =>
    ids.includes(on.id) ? ids.filter((id) => id !== on.id) : [...ids, on.id];
  return ofParts(
    on.kind === 'point' ? { points: changed(points), lines } : { points, lines: changed(lines) },
  );
}

/**
 * The splits that lie wholly in a frame, and the points in it that they do not end in. Corners of the outline are left
 * out: whoever frames lines to move them does not mean the block's shape.
 */
export function partsInFrame(drawing: Drawing, { minX, minY, maxX, maxY }: Box): Parts {
  const isIn = ({ x, y }: Point) => x >= minX && x <= maxX && y >= minY && y <= maxY;
  const { points, outline, splits } = drawing;
  const framed = splits.filter(({ from, to }) => isIn(points[from]!) && isIn(points[to]!));
  const spoken = new Set([...outline, ...framed.flatMap(({ from, to }) => [from, to])]);
  const rest = Object.values(points).filter((point) => !spoken.has(point.id) && isIn(point));
  return { points: rest.map(({ id }) => id), lines: framed.map(({ id }) => id) };
}
