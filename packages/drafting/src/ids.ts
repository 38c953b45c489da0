import type { Drawing, LineId, PointId } from '@seamwright/arrangement';

const numberOf = (id: string): number => {
  const digits = /\d+$/.exec(id);
  return digits === null ? 0 : Number(digits[0]);
};

/** Gives out ids that no point or line of a drawing bears, the same ones for the same drawing. */
export interface FreshIds {
  point(): PointId;
  split(): LineId;
}

/**
 * Points and splits count on together from the highest number that either bears, so an id stays unused even
 * when the ones below it are deleted. Foreign ids (`line-b`) count as 0: a letter and a number of our own
 * cannot equal them unless they end in a number, which then counts.
 */
export function freshIds(drawing: Drawing): FreshIds {
  let last = 0;
  for (const id of Object.keys(drawing.points)) last = Math.max(last, numberOf(id));
  for (const split of drawing.splits) last = Math.max(last, numberOf(split.id));
  return {
    point: () => `p${++last}`,
    split: () => `s${++last}`,
  };
}
