import { sentence } from '@seamwright/geometry';
import type { FoundationJob, PagePlan } from '@seamwright/pages';
import { proxy } from 'comlink';
import { download, fileName } from '../../../keeping/download.ts';
import { writingWorker } from '../../../study/computing.ts';
import { pageFonts } from '../page-fonts.ts';
import { printDocument } from './print-document.ts';
import { CannotBe, produce } from './under-way.ts';

/** Saves the sheets as one PDF file. The PDF writer is loaded now, by the worker, and not before. */
export const savePdf = (plan: PagePlan, title: string): Promise<void> =>
  produce('PDF file', async (report) => {
    const fonts = await pageFonts();
    const bytes = await writingWorker.ask((worker) => worker.pdf(plan, fonts, proxy(report)));
    const name = fileName(title, '.pdf');
    download(name, new Uint8Array(bytes), 'application/pdf');
    return `Saved ${name}`;
  });

/** Milliseconds between two files: some browsers lose downloads that come at once. */
const BETWEEN_FILES = 250;

/** Saves each sheet as an SVG file of true size. All are written before the first is saved. */
export const saveSvg = (plan: PagePlan, title: string): Promise<void> =>
  produce('SVG files', async (report, signal) => {
    const { length } = plan.sheets;
    const files = await writingWorker.ask((worker) => worker.svg(plan));
    for (const [index, file] of files.entries()) {
      if (index > 0) await new Promise((resolve) => setTimeout(resolve, BETWEEN_FILES));
      signal.throwIfAborted();
      const ending = length === 1 ? '.svg' : ` ${index + 1} of ${length}.svg`;
      download(fileName(title, ending), file, 'image/svg+xml');
      report(index + 1, length);
    }
    return length === 1 ? 'Saved one SVG file' : `Saved ${length} SVG files`;
  });

/**
 * Opens the browser's own dialog for printing, with the sheets.
 *
 * @param times how often each is there; once when left out
 */
export const printSheets = (plan: PagePlan, title: string, times: readonly number[] = []): Promise<void> =>
  produce('pages for the printer', async (_, signal) => {
    const fonts = await pageFonts();
    const html = await writingWorker.ask((worker) => worker.printHtml(plan, fonts, times));
    await printDocument(html, signal);
    return `${title} was handed to the browser for printing`;
  });

/** Saves one foundation as a picture of so many pixels to the inch. */
export const savePng = (job: FoundationJob, key: string, letter: string, perInch: number): Promise<void> =>
  produce('PNG picture', async () => {
    const fonts = await pageFonts();
    const drawn = await writingWorker.ask((worker) => worker.png(job, key, perInch, fonts));
    if (!drawn.ok) throw new CannotBe(sentence(drawn.problem));
    const name = fileName(`${job.title} ${letter}, ${perInch} to the inch`, '.png');
    download(name, new Uint8Array(drawn.value), 'image/png');
    return `Saved ${name}`;
  });
