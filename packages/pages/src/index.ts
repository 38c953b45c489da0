export { FONT_FAMILY, FONT_FILES, type PageFonts } from './fonts.ts';
export { type FoundationJob, USUAL_ALLOWANCE } from './job.ts';
export { layFoundations } from './lay-foundations.ts';
export * from './model.ts';
export { PAPERS, type Paper } from './paper.ts';
export { writePdf } from './pdf.ts';
export { type Printable, printable } from './printable.ts';
export { writeSvg } from './svg.ts';
export { alikeSections } from './templates.ts';
