import { create } from 'zustand';
import type { BulkSubject } from '../../../study/look-ahead-asked.ts';

/** How the maker presses joins of the blocks that are open in this visit, where not as usual; and whether the map is shown. */
interface BulkState {
  readonly pressings: Readonly<Record<string, BulkSubject['pressings'][number]>>;
  readonly shown: boolean;
}

export const useBulk = create<BulkState>()(() => ({ pressings: {}, shown: true }));

export const press = (key: string, pressing: BulkSubject['pressings'][number]): void =>
  useBulk.setState(({ pressings }) => ({ pressings: { ...pressings, [key]: pressing } }));

export const showBulk = (shown: boolean): void => useBulk.setState({ shown });

/** From a light grey for one layer to a dark one for the most. */
export function greyOf(layers: number, most: number): string {
  const part = most <= 1 ? 0 : (layers - 1) / (most - 1);
  return `hsl(40 5% ${Math.round(95 - 75 * part)}%)`;
}
