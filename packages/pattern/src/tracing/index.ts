export * from './limits.ts';
export { kindOfPicture, readPictureHeader } from './picture-header.ts';
export * from './pictures.ts';
export * from './placement.ts';
export * from './tracing.ts';
