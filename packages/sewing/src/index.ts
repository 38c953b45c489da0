export * from './alternatives.ts';
export * from './letters.ts';
export * from './plan.ts';
export type { Wish } from './refine.ts';
export * from './replay.ts';
export * from './report.ts';
export { SEARCH_EFFORT } from './search.ts';
export * from './types.ts';
