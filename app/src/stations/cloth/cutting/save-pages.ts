import { type Result, sentence } from '@seamwright/geometry';
import type { PagePlan } from '@seamwright/pages';
import { proxy } from 'comlink';
import { download, fileName } from '../../../keeping/download.ts';
import { writingWorker } from '../../../study/computing.ts';
import { CannotBe, produce } from '../../paper/outputs/under-way.ts';
import { pageFonts } from '../../paper/page-fonts.ts';

/** Lays out pages and saves them as PDF. The PDF writer is loaded now, by the worker, and not before. */
export const savePages = (what: string, title: string, lay: () => Promise<Result<PagePlan>>): Promise<void> =>
  produce(what, async (report) => {
    const fonts = await pageFonts();
    const laid = await lay();
    if (!laid.ok) throw new CannotBe(sentence(laid.problem));
    const bytes = await writingWorker.ask((worker) => worker.pdf(laid.value, fonts, proxy(report)));
    const name = fileName(title, '.pdf');
    download(name, new Uint8Array(bytes), 'application/pdf');
    return `Saved ${name}`;
  });
