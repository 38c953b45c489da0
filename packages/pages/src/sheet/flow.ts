import type { Box } from '@seamwright/geometry';
import { moved } from '../marks/marks.ts';
import type { Mark } from '../marks/model.ts';
import type { Part } from './check-part.ts';

/** A part of a text that runs over sheets. */
export interface FlowPart extends Part {
  /** Whether it stays on one sheet with what follows. */
  readonly keep?: boolean;
  /** What stands above it where it is the first on a sheet other than the first. */
  readonly again?: readonly Part[];
}

export interface Flowed {
  /** The marks of each sheet. */
  readonly sheets: readonly (readonly Mark[])[];
  /** By part, the index of the sheet that it stands on. */
  readonly sheetOf: readonly number[];
}

/**
 * The parts one below the other, sheet by sheet. Parts that stay together go to a new sheet together, unless they fill
 * more than one. No part may be higher than the room, less what stands above it again.
 *
 * @param room the same on every sheet, points
 */
export function flow(parts: readonly FlowPart[], { minX, minY, maxY }: Box<'page'>): Flowed {
  const sheets: Mark[][] = [[]];
  const sheetOf: number[] = [];
  let y = minY;
  const put = (part: Part) => {
    sheets.at(-1)!.push(...part.marks.map((mark) => moved(mark, { x: minX, y })));
    y += part.height + (part.gap ?? 0);
  };
  const open = ({ again = [] }: FlowPart) => {
    sheets.push([]);
    y = minY;
    again.forEach(put);
  };
  for (let from = 0, to = 0; from < parts.length; from = to) {
    to = from + 1;
    while (to < parts.length && parts[to - 1]!.keep) to++;
    const run = parts.slice(from, to);
    const height = run.reduce((sum, part, i) => sum + part.height + (i > 0 ? (run[i - 1]!.gap ?? 0) : 0), 0);
    if (y > minY && y + height > maxY) open(run[0]!);
    run.forEach((part, i) => {
      // Of a run that fills more than a sheet.
      if (i > 0 && y + part.height > maxY) open(part);
      put(part);
      sheetOf.push(sheets.length - 1);
    });
  }
  return { sheets, sheetOf };
}
