import { type PagePlan, writeSvg } from '@seamwright/pages';
import { download, fileName } from '../../keeping/download.ts';
import { announce, warn } from '../../store/notices.ts';
import { pagesWorker } from '../../study/computing.ts';
import { pageFonts } from './page-fonts.ts';

/** Saves the sheets as one PDF file. The PDF writer is loaded now, by the worker, and not before. */
export async function savePdf(plan: PagePlan, title: string): Promise<void> {
  try {
    const fonts = await pageFonts();
    const bytes = await pagesWorker().ask((worker) => worker.pdf(plan, fonts));
    const name = fileName(title, '.pdf');
    download(name, new Uint8Array(bytes), 'application/pdf');
    announce(`Saved ${name}`);
  } catch (error) {
    warn('The PDF could not be made. Reload the page and try again; the pattern is kept.');
    reportError(error);
  }
}

/** Milliseconds between two files: some browsers lose downloads that come at once. */
const BETWEEN_FILES = 250;

/** Saves each sheet as an SVG file of true size. */
export async function saveSvg(plan: PagePlan, title: string): Promise<void> {
  const { sheets } = plan;
  for (const index of sheets.keys()) {
    if (index > 0) await new Promise((resolve) => setTimeout(resolve, BETWEEN_FILES));
    const ending = sheets.length === 1 ? '.svg' : ` ${index + 1} of ${sheets.length}.svg`;
    download(fileName(title, ending), writeSvg(plan, index), 'image/svg+xml');
  }
  announce(sheets.length === 1 ? 'Saved one SVG file' : `Saved ${sheets.length} SVG files`);
}
