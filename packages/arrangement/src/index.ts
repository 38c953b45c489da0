export * from './alike.ts';
export * from './arrange.ts';
export * from './boundary.ts';
export * from './drawing.ts';
export { inches, placeName, TOLD_ONE_BY_ONE, toldOneByOne } from './findings.ts';
export * from './from-segments.ts';
export * from './identity.ts';
export * from './pin.ts';
export * from './types.ts';
