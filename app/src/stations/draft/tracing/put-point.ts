import type { Point } from '@seamwright/geometry';
import { announce } from '../../../store/notices.ts';
import { usePlacing } from './placing.ts';
import { placingWords } from './placing-words.ts';

/**
 * Points at a place of the picture: as the first, the second, or anew where two are there already. `asks`: with the second,
 * the field for their distance takes the focus.
 */
export function putPoint(at: Point<'picture'>, index: number, asks: boolean): void {
  const { points } = usePlacing.getState();
  const next = index >= 2 ? [at] : [...points.slice(0, index), at, ...points.slice(index + 1)];
  usePlacing.setState({ points: next, under: null, preview: null, asks: asks && next.length === 2 });
  announce(placingWords('pointing', next.length));
}
