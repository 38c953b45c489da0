export * from './chart.ts';
export * from './plan-strips.ts';
export type { LoadSolver } from './strips/least.ts';
export * from './types.ts';
