export * from './letters.ts';
export * from './plan.ts';
export * from './replay.ts';
export * from './report.ts';
export { SEARCH_EFFORT } from './search.ts';
export * from './types.ts';
