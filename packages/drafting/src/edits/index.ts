export * from './add-split.ts';
export * from './delete-point.ts';
export * from './delete-split.ts';
export * from './move-point.ts';
export * from './outline-corners.ts';
export * from './replace-outline.ts';
export * from './resize-drawing.ts';
