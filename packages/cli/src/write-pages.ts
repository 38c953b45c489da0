import { fail } from '@seamwright/geometry';
import { type PagePlan, printable, writePdf, writeSvg } from '@seamwright/pages';
import type { Io } from './io.ts';
import type { OutOrder } from './page-options.ts';
import { isSameFile, type NewFile, type WriteProblem, writeWhole } from './write-files.ts';

type Written =
  | {
      readonly ok: true;
      readonly paths: readonly string[];
      /** What could not be set as it is written. */
      readonly notes: readonly string[];
    }
  | ({ readonly ok: false } & WriteProblem);

/**
 * Writes true-size pages as one PDF file, or as one SVG file for each: all of them or none.
 *
 * @param input the file that was read, which no page may take the place of
 */
export async function writePages(
  plan: PagePlan,
  { out, form }: OutOrder,
  io: Io,
  input?: string,
): Promise<Written> {
  const fonts = await io.fonts();
  const files: NewFile[] =
    form === 'pdf'
      ? [{ path: out, content: await writePdf(plan, fonts) }]
      : plan.sheets.map((_, i) => ({ path: pagePath(out, i), content: writeSvg(plan, i) }));
  const own = files.find(({ path }) => input !== undefined && isSameFile(path, input));
  if (own !== undefined) {
    const { problem } = fail('A page would take the place of the FILE', '', 'Choose another --out');
    return { ok: false, path: own.path, problem };
  }
  const problem = await writeWhole(files);
  if (problem !== null) return { ok: false, ...problem };
  return { ok: true, paths: files.map(({ path }) => path), notes: printable(plan, fonts).notes };
}

/** F.svg, F-2.svg, F-3.svg … */
export const pagePath = (out: string, index: number): string =>
  index === 0 ? out : out.replace(/(\.[^.]+)$/, `-${index + 1}$1`);
