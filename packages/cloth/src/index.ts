export * from './chart.ts';
export * from './check-rules.ts';
export * from './cut-pieces.ts';
export * from './patch-needs.ts';
export * from './plan-strips.ts';
export type { LoadSolver } from './strips/least.ts';
export * from './types.ts';
