import { FOUR_PATCHES } from './four-patches.ts';
import { LOGS } from './logs.ts';
import { NINE_PATCHES } from './nine-patches.ts';
import type { StartingPoint } from './starting-point.ts';
import { STRIPS } from './strips.ts';
import { WEBS } from './webs.ts';

export type { Parameter, StartingPoint } from './starting-point.ts';

/**
 * Traditional dissections to start from, each by its traditional name. Names and shapes: Marie D. Webster, Quilts: Their
 * Story and How to Make Them, 1915 (public domain; from memory), and common practice.
 */
export const startingPoints: readonly StartingPoint[] = [
  ...LOGS,
  ...STRIPS,
  ...FOUR_PATCHES,
  ...NINE_PATCHES,
  ...WEBS,
];
