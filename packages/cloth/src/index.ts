export * from './chart.ts';
export * from './types.ts';
