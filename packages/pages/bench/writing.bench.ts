import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { sentence } from '@seamwright/geometry';
import { jsPDF } from 'jspdf';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import {
  FONT_FILES,
  type FoundationJob,
  layFoundations,
  type PagePlan,
  type Progress,
  writePdf,
} from '../src/index.ts';
import { star, whirl } from '../test/repeated.ts';

const { resolve } = createRequire(import.meta.url);
const bytesOf = (file: string) => new Uint8Array(readFileSync(resolve(file)));

/** Base64 as the library takes it, made beforehand: the fonts are the same in every document. */
const BASE64 = { regular: '', semibold: '' };

/** Foundations that are laid out, packed and written, and beside it as many paths by the library alone. Run: `npm run bench -- writing`. */
async function measureWriting(): Promise<void> {
  const fonts = { regular: bytesOf(FONT_FILES.regular), semibold: bytesOf(FONT_FILES.semibold) };
  for (const weight of WEIGHTS) BASE64[weight] = Buffer.from(fonts[weight]).toString('base64');
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
      'of it pack',
      'write',
      'plain paths',
      'plain marks',
      'all ÷ paths',
      'all ÷ marks',
      'pack, write ÷ marks',
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
    const rounds: (readonly number[])[] = [];
    let plan = layOut(job);
    for (let round = 0; round <= ROUNDS; round++) {
      // From when the last foundation is begun to when all have a place.
      let [begun, packed] = [0, 0];
      const laid = await spent(() => {
        plan = layOut(job, (_, __, doing) => {
          if (doing === 'drawing') begun = processorTime();
          else packed = processorTime();
        });
      });
      const written = await spent(() => writePdf(plan, fonts));
      const plainPaths = await spent(() => plainly(plan, false));
      const plainMarks = await spent(() => plainly(plan, true));
      // Not the first, so that no side pays for being compiled.
      if (round > 0) rounds.push([laid, packed - begun, written, plainPaths, plainMarks]);
    }
    const [laid, packed, written, plainPaths, plainMarks] = [0, 1, 2, 3, 4].map((k) =>
      median(rounds.map((round) => round[k]!)),
    ) as [number, number, number, number, number];
    const { sheets, packing, prints } = plan;
    const marks = sheets.flatMap((sheet) => sheet.marks);
    const paths = marks.filter(({ kind }) => kind === 'path').length;
    table.row(
      name,
      prints.length,
      sheets.length,
      packing?.atLeast ?? '',
      paths,
      marks.length - paths,
      ms(laid),
      ms(packed),
      ms(written),
      ms(plainPaths),
      ms(plainMarks),
      factor((laid + written) / plainPaths),
      factor((laid + written) / plainMarks),
      factor((packed + written) / plainMarks),
      factor(written / plainMarks),
    );
  }
}

/** All four are measured in turn, so often. */
const ROUNDS = 9;

const median = (values: readonly number[]): number =>
  [...values].sort((p, q) => p - q)[Math.floor(values.length / 2)]!;

/** Milliseconds of the processor, those of collecting what the run before left behind not counted. */
async function spent(run: () => unknown): Promise<number> {
  globalThis.gc?.();
  const before = processorTime();
  await run();
  return processorTime() - before;
}

function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function layOut(job: FoundationJob, report?: Progress): PagePlan {
  const laid = layFoundations(job, report);
  if (!laid.ok) throw new Error(sentence(laid.problem));
  return laid.value;
}

/**
 * The plan's paths, written as the library's documentation does it: each with its width, dash and grey; and its texts, if
 * they are wanted.
 */
function plainly({ sheets, paper }: PagePlan, withTexts: boolean): number {
  const size = [paper.width, paper.height];
  const doc = new jsPDF({ unit: 'pt', format: size, compress: true, precision: 4 });
  for (const weight of withTexts ? WEIGHTS : []) {
    doc.addFileToVFS(`${weight}.ttf`, BASE64[weight]);
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
      } else if (withTexts) {
        doc.setFont('sans', mark.weight);
        doc.setFontSize(mark.size);
        doc.setTextColor(Math.round(255 * (1 - mark.ink)));
        doc.text(mark.content, mark.at.x, mark.at.y, { align: ALIGN[mark.anchor], angle: -mark.angle });
      }
    }
  });
  return doc.output('arraybuffer').byteLength;
}

const WEIGHTS = ['regular', 'semibold'] as const;

const ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;

await measureWriting();
