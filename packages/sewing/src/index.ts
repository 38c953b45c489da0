export * from './assembly.ts';
export * from './letters.ts';
export * from './plan.ts';
export * from './replay.ts';
export * from './report.ts';
export * from './types.ts';
