import { LAYERS, PLAIN_RULES, USABLE_WIDTH, USUAL_CUTS, USUAL_STEP } from '@seamwright/cloth';
import type { LengthUnit } from '@seamwright/geometry';
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
  /**
   * By the unit of the pattern that is cut: who chooses eighths of an inch in one pattern means no 3.175 mm in the next, and each
   * has its usual step as long as nobody chooses.
   */
  readonly roundUpTo: Readonly<Record<LengthUnit, number>>;
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
  roundUpTo: USUAL_STEP,
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
  return asFarAsAlike(keptFields(KEY), USUAL);
}

function asFarAsAlike<Usual>(kept: unknown, usual: Usual): Usual {
  if (typeof usual !== 'object' || usual === null)
    return typeof kept === typeof usual ? (kept as Usual) : usual;
  const known = (typeof kept === 'object' ? kept : null) as Record<string, unknown> | null;
  const entries = Object.entries(usual).map(
    ([name, own]) => [name, asFarAsAlike(known?.[name], own)] as const,
  );
  return Object.fromEntries(entries) as Usual;
}

export const useCuttingHabits = create<CuttingHabits>()(read);

export function cutAs(change: Partial<CuttingHabits>): void {
  useCuttingHabits.setState(change);
  keepFields(KEY, change);
}
