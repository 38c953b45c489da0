/** What the worker needs only after the first answer: loaded then, so that a first visit does not wait for it. */
export {
  layCuttingChart,
  layFoundations,
  layTemplates,
  writePdf,
  writePrintHtml,
  writeSvg,
} from '@seamwright/pages';
export { repairsFor } from '@seamwright/sewing';
export { drawFoundation } from './draw-foundation.ts';
