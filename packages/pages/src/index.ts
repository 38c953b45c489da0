export type { CuttingChartJob } from './charts/chart-job.ts';
export { layCuttingChart } from './charts/lay-cutting-chart.ts';
export { foundationPicture } from './foundation/foundation-picture.ts';
export { layFoundations } from './foundation/lay-foundations.ts';
export { patchFabrics } from './foundation/patch-facts.ts';
export { type PrintRun, printsOf, printsOn } from './foundation/prints.ts';
export { alikeSections } from './foundation/templates.ts';
export { layTemplates } from './fussy-cutting/lay-templates.ts';
export type { TemplateJob, TemplateKind } from './fussy-cutting/template-job.ts';
export { cleanName, type FinishedSize, type FoundationJob } from './job.ts';
export * from './marks/model.ts';
export type { Progress } from './progress.ts';
export { type CheckPage, type CheckPageJob, checkPage } from './sheet/check-page.ts';
export type { Printer } from './sheet/correction.ts';
export {
  type Margins,
  PAPER_RANGE,
  PAPERS,
  type Paper,
  type PaperChoice,
  type PaperName,
  USUAL_MARGINS,
} from './sheet/paper.ts';
export { type PhotocopyRow, type PhotocopyTable, photocopyTable } from './sheet/photocopy.ts';
export { type Measured, printerFrom, type RulerMeasure } from './sheet/printer-measures.ts';
export { PRINTER_RANGE } from './sheet/printer-range.ts';
export { GAP_RANGE, OVERLAP_RANGE, USUAL_ALLOWANCE, USUAL_GAP, USUAL_OVERLAP } from './sheet/usual.ts';
export { readSize } from './words/read-lengths.ts';
export { FONT_FAMILY, FONT_FILES, type PageFonts } from './writers/fonts.ts';
export { writePdf } from './writers/pdf.ts';
export { withResolution } from './writers/png.ts';
export { writePrintHtml } from './writers/print-html.ts';
export { type Printable, printable } from './writers/printable.ts';
export { writeSvg } from './writers/svg.ts';
