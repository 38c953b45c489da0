import type { PieceCut } from '@seamwright/cloth';

/** By how much a piece may lie turned, in words: rounded down, so that it holds. Null where any turn will do. */
export const toleratedTurn = ({ toleranceAngle }: Pick<PieceCut, 'toleranceAngle'>): string | null =>
  toleranceAngle >= 180 ? null : `${Math.floor(toleranceAngle * 10) / 10}°`;
