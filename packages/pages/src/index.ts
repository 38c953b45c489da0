export type { CuttingChartJob } from './chart-job.ts';
export { type CheckPage, type CheckPageJob, checkPage } from './check-page.ts';
export { PRINTER_RANGE, type Printer } from './correction.ts';
export { FONT_FAMILY, FONT_FILES, type PageFonts } from './fonts.ts';
export { foundationPicture } from './foundation-picture.ts';
export {
  type FinishedSize,
  type FoundationJob,
  GAP_RANGE,
  OVERLAP_RANGE,
  USUAL_ALLOWANCE,
  USUAL_GAP,
  USUAL_OVERLAP,
} from './job.ts';
export { layCuttingChart } from './lay-cutting-chart.ts';
export { layFoundations } from './lay-foundations.ts';
export { layTemplates } from './lay-templates.ts';
export * from './model.ts';
export {
  type Margins,
  PAPER_RANGE,
  PAPERS,
  type Paper,
  type PaperChoice,
  type PaperName,
  USUAL_MARGINS,
} from './paper.ts';
export type { PatchFabric } from './patch-facts.ts';
export { writePdf } from './pdf.ts';
export { type PhotocopyRow, type PhotocopyTable, photocopyTable } from './photocopy.ts';
export { withResolution } from './png.ts';
export { writePrintHtml } from './print-html.ts';
export { type Printable, printable } from './printable.ts';
export { type Measured, printerFrom, type RulerMeasure } from './printer-measures.ts';
export { type PrintRun, printsOf } from './prints.ts';
export type { Progress } from './progress.ts';
export { writeSvg } from './svg.ts';
export type { TemplateJob, TemplateKind } from './template-job.ts';
export { alikeSections } from './templates.ts';
