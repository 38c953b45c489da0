import { create } from 'zustand';

interface BulkState {
  /** Whether the map of layers is shown. */
  readonly shown: boolean;
}

export const useBulk = create<BulkState>()(() => ({ shown: true }));

export const showBulk = (shown: boolean): void => useBulk.setState({ shown });

/** From a light grey for one layer to a dark one for the most. */
export function greyOf(layers: number, most: number): string {
  const part = most <= 1 ? 0 : (layers - 1) / (most - 1);
  return `hsl(40 5% ${Math.round(95 - 75 * part)}%)`;
}
