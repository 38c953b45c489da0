import { type Drawing, idsAfter, type LineId, type PointId } from '@seamwright/arrangement';

/** Gives out ids that no point or line of a drawing bears, the same ones for the same drawing. */
export interface FreshIds {
  point(): PointId;
  split(): LineId;
}

/** Points and splits count on together from the highest number that either bears: {@link idsAfter}. */
export function freshIds({ points, splits }: Drawing): FreshIds {
  const next = idsAfter([...Object.keys(points), ...splits.map(({ id }) => id)]);
  return {
    point: () => next('p'),
    split: () => next('s'),
  };
}
