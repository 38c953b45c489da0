import { LAYERS, PLAIN_RULES, USABLE_WIDTH, USUAL_CUTS } from '@seamwright/cloth';
import { create } from 'zustand';
import { keepFields, keptFields } from './kept.ts';

export type Scope = 'block' | 'pattern';

/** How the maker cuts and buys, kept between visits; no part of any pattern. Lengths are inches. */
export interface CuttingHabits {
  /** What is cut for: the open block, or all blocks of the pattern. */
  readonly scope: Scope;
  readonly spare: number;
  /** Degrees. */
  readonly turn: number;
  readonly roundUpTo: number;
  readonly usableWidth: number;
  readonly layers: number;
  /** Chart each section on its own. */
  readonly bySection: boolean;
  readonly trim: boolean;
  readonly spareOfLargest: boolean;
  /** Parts of the length, from 0 to below 1. */
  readonly shrinkage: number;
  readonly safety: number;
  /** Buy whole quarters of a yard, not eighths. */
  readonly quarterYards: boolean;
  readonly moreOnTheLine: boolean;
  /** Press joins open, not to one side. */
  readonly pressOpen: boolean;
}

const USUAL: CuttingHabits = {
  scope: 'block',
  spare: USUAL_CUTS.spare,
  turn: USUAL_CUTS.turn,
  roundUpTo: USUAL_CUTS.roundUpTo,
  usableWidth: USABLE_WIDTH,
  layers: LAYERS.usual,
  bySection: false,
  trim: PLAIN_RULES.trim,
  spareOfLargest: PLAIN_RULES.spareOfLargest,
  shrinkage: PLAIN_RULES.shrinkage,
  safety: PLAIN_RULES.safety,
  quarterYards: false,
  moreOnTheLine: PLAIN_RULES.moreOnTheLine,
  pressOpen: false,
};

const KEY = 'seamwright cutting';

/** What was kept, as far as it is of the kind that is expected. Whether numbers make sense is asked when they are used. */
function read(): CuttingHabits {
  const known = keptFields(KEY);
  const entries = Object.entries(USUAL).map(([name, usual]) => {
    const value = known[name];
    return [name, typeof value === typeof usual ? value : usual] as const;
  });
  return Object.fromEntries(entries) as unknown as CuttingHabits;
}

export const useCuttingHabits = create<CuttingHabits>()(read);

export function cutAs(change: Partial<CuttingHabits>): void {
  useCuttingHabits.setState(change);
  keepFields(KEY, change);
}
