export * from './point.ts';
export * from './result.ts';
export * from './tolerance.ts';
