export * from './add-symmetric.ts';
export { imagesOf } from './images.ts';
export * from './mirror.ts';
export * from './move-symmetric.ts';
export * from './repeat.ts';
export * from './symmetry.ts';
