import type { Drawing } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import { type DrawnLine, drawnLines } from './lines.ts';
import { uncovered } from './stretches.ts';

/** What an edit draws and what it takes away, stretch by stretch: for showing it beforehand. */
export interface Difference {
  readonly added: readonly Segment[];
  readonly removed: readonly Segment[];
}

/** The stretches of lines that are in one drawing and not in the other, edges and splits alike. */
export function differenceOf(before: Drawing, after: Drawing): Difference {
  const [old, fresh] = [drawnLines(before), drawnLines(after)].map((lines) => [...lines.values()]);
  return { added: only(fresh!, old!), removed: only(old!, fresh!) };
}

function only(lines: readonly DrawnLine[], others: readonly DrawnLine[]): readonly Segment[] {
  // Most lines are in both, end by end: those need no comparing with all.
  const known = new Set(others.map(keyOf));
  const segments = others.map(({ from, to }) => ({ a: from, b: to }));
  return lines
    .filter((line) => !known.has(keyOf(line)))
    .flatMap(({ from, to }) => uncovered({ a: from, b: to }, segments));
}

const keyOf = ({ from, to }: DrawnLine): string => `${from.x} ${from.y} ${to.x} ${to.y}`;
