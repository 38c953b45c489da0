export * from './pattern.ts';
