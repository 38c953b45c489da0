import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { sentence } from '@seamwright/geometry';
import { jsPDF } from 'jspdf';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import {
  FONT_FILES,
  type FoundationJob,
  layFoundations,
  type PageFonts,
  type PagePlan,
  writePdf,
} from '../src/index.ts';
import { star, whirl } from '../test/repeated.ts';

const { resolve } = createRequire(import.meta.url);
const bytesOf = (file: string) => new Uint8Array(readFileSync(resolve(file)));

/** Foundations that are laid out, packed and written, and beside it as many paths by the library alone. */
export async function measureWriting(): Promise<void> {
  const fonts = { regular: bytesOf(FONT_FILES.regular), semibold: bytesOf(FONT_FILES.semibold) };
  const table = new Table(
    'From the job to the file, milliseconds; “plain”: as many paths of as many points, then all marks, by the PDF library alone',
    [
      'block',
      'prints',
      'sheets',
      'at least',
      'paths',
      'texts',
      'lay out',
      'write',
      'plain paths',
      'plain marks',
      'all ÷ paths',
      'all ÷ marks',
      'write ÷ marks',
    ],
  );
  for (const [name, of, count] of [
    ['whirl', whirl(), 500],
    ['harbour star', star(6), 500],
  ] as const) {
    const each = of.plan.sections.length;
    const sizes = Array.from({ length: Math.round(count / each) }, (_, i) => ({
      scale: 0.5 + (i * each) / count,
      copies: 2,
    }));
    const job: FoundationJob = { title: name, ...of, paper: 'letter', sizes };
    // Once before, so that no side pays for being compiled.
    for (const counted of [false, true]) {
      const laid = await spent(() => layOut(job));
      const written = await spent(() => writePdf(laid.result, fonts));
      const plainPaths = await spent(() => plainly(laid.result, null));
      const plainMarks = await spent(() => plainly(laid.result, fonts));
      if (!counted) continue;
      const { sheets, packing, prints } = laid.result;
      const marks = sheets.flatMap((sheet) => sheet.marks);
      const paths = marks.filter(({ kind }) => kind === 'path').length;
      table.row(
        name,
        prints.length,
        sheets.length,
        packing?.atLeast ?? '',
        paths,
        marks.length - paths,
        ms(laid.ms),
        ms(written.ms),
        ms(plainPaths.ms),
        ms(plainMarks.ms),
        factor((laid.ms + written.ms) / plainPaths.ms),
        factor((laid.ms + written.ms) / plainMarks.ms),
        factor(written.ms / plainMarks.ms),
      );
    }
  }
}

/** Milliseconds of the processor. */
async function spent<T>(run: () => T | Promise<T>): Promise<{ ms: number; result: T }> {
  globalThis.gc?.();
  const before = process.cpuUsage();
  const result = await run();
  const { user, system } = process.cpuUsage(before);
  return { ms: (user + system) / 1000, result };
}

function layOut(job: FoundationJob): PagePlan {
  const laid = layFoundations(job);
  if (!laid.ok) throw new Error(sentence(laid.problem));
  return laid.value;
}

/**
 * The plan's paths, written as the library's documentation does it: each with its width, dash and grey; and its texts, where
 * there are fonts to set them in.
 */
function plainly({ sheets, paper }: PagePlan, fonts: PageFonts | null): number {
  const size = [paper.width, paper.height];
  const doc = new jsPDF({ unit: 'pt', format: size, compress: true, precision: 4 });
  for (const weight of fonts === null ? [] : (['regular', 'semibold'] as const)) {
    doc.addFileToVFS(`${weight}.ttf`, Buffer.from(fonts![weight]).toString('base64'));
    doc.addFont(`${weight}.ttf`, 'sans', weight);
  }
  sheets.forEach(({ marks }, i) => {
    if (i > 0) doc.addPage(size);
    for (const mark of marks) {
      if (mark.kind === 'path') {
        doc.setLineWidth(mark.stroke?.width ?? 1);
        doc.setLineDashPattern([...(mark.stroke?.dash ?? [])], 0);
        doc.setDrawColor(Math.round(255 * (1 - (mark.stroke?.ink ?? 1))));
        const [first, ...rest] = mark.points;
        doc.moveTo(first!.x, first!.y);
        for (const { x, y } of rest) doc.lineTo(x, y);
        if (mark.closed) doc.close();
        doc.stroke();
      } else if (fonts !== null) {
        doc.setFont('sans', mark.weight);
        doc.setFontSize(mark.size);
        doc.setTextColor(Math.round(255 * (1 - mark.ink)));
        doc.text(mark.content, mark.at.x, mark.at.y, { align: ALIGN[mark.anchor], angle: -mark.angle });
      }
    }
  });
  return doc.output('arraybuffer').byteLength;
}

const ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;
