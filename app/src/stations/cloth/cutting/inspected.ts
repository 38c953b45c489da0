import type { PieceCut } from '@seamwright/cloth';
import { create } from 'zustand';

/** The patch whose piece is looked at closely, and the size that the maker tries for it. */
interface Inspected {
  /** Its name; null: none is. */
  readonly name: string | null;
  /** Left out where it is the size that was worked out. */
  readonly tried: Partial<Pick<PieceCut, 'width' | 'height'>>;
}

export const useInspected = create<Inspected>()(() => ({ name: null, tried: {} }));

export const inspect = (name: string | null): void => useInspected.setState({ name, tried: {} });

export const tryLength = (tried: Inspected['tried']): void =>
  useInspected.setState((before) => ({ tried: { ...before.tried, ...tried } }));
