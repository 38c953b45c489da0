import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  distance,
  distanceToSegment,
  type Point,
  parameterOn,
  SNAP_DISTANCE,
  segmentCrossing,
} from '@seamwright/geometry';
import { type DrawnLine, drawnLines } from '../lines.ts';

/** A place between the ends of a line where other lines meet it. */
export interface Meeting {
  /** Share of the way from the line's first end to its second. */
  readonly share: number;
  /** Inches. */
  readonly at: Point;
  /** The lines that cross there or end there. */
  readonly lines: readonly LineId[];
}

/** Where other lines cross a line or end on it, in order; not its own ends, and of places within a needle's width one. */
export function meetingsOn(drawing: Drawing, line: DrawnLine): readonly Meeting[] {
  const { from, to } = line;
  const found: { readonly share: number; readonly at: Point; readonly line: LineId }[] = [];
  for (const other of drawnLines(drawing).values()) {
    if (other.id === line.id) continue;
    const crossing = segmentCrossing(from, to, other.from, other.to);
    if (crossing !== null) found.push({ share: crossing.t, at: crossing.at, line: other.id });
    // An end that was put on the line may miss it by a rounding.
    for (const end of [other.from, other.to])
      if (distanceToSegment(end, from, to) <= SNAP_DISTANCE)
        found.push({ share: parameterOn(from, to, end), at: end, line: other.id });
  }
  const size = distance(from, to);
  const sorted = found.sort((m, n) => m.share - n.share);
  const kept: { share: number; at: Point; lines: LineId[] }[] = [];
  for (const { share, at, line: other } of sorted) {
    const way = share * size;
    if (way <= SNAP_DISTANCE || size - way <= SNAP_DISTANCE) continue;
    const last = kept.at(-1);
    if (last === undefined || way - last.share * size > SNAP_DISTANCE)
      kept.push({ share, at: { x: at.x, y: at.y }, lines: [other] });
    else if (!last.lines.includes(other)) last.lines.push(other);
  }
  return kept;
}
