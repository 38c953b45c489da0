export * from './drawing.ts';
export * from './identity.ts';
export * from './types.ts';
