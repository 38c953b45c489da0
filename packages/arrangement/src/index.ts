export * from './alike.ts';
export * from './arrange.ts';
export * from './boundary.ts';
export { idsAfter } from './counted-ids.ts';
export * from './drawing.ts';
export { TOLD_ONE_BY_ONE, toldOneByOne } from './findings.ts';
export * from './from-segments.ts';
export * from './identity.ts';
export {
  inches,
  inWords,
  type Message,
  placeOn,
  plainWords,
  type Said,
  say,
  thePatches,
  type Wording,
} from './message.ts';
export * from './pin.ts';
export * from './types.ts';
