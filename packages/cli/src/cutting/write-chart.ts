import { type CutOut, shownRows } from '@seamwright/cloth';
import { layCuttingChart, printable, writePdf } from '@seamwright/pages';
import { complain, oneLine } from '../complaint.ts';
import type { Io, Status } from '../io.ts';
import { counted } from '../report-text.ts';
import { writeWhole } from '../write-files.ts';
import { type BlocksToCut, cutForText } from './blocks-to-cut.ts';
import type { CuttingOrder } from './order.ts';

/** Writes the chart as pages, whole or not at all, and says so. */
export async function writeChart(
  out: string,
  toCut: BlocksToCut,
  order: CuttingOrder,
  cutOut: CutOut,
  io: Io,
): Promise<Status> {
  const { blocks, title, unit, notes } = toCut;
  const names = blocks.map(({ name }) => name);
  const isOne = names.length === 1;
  const laid = layCuttingChart({
    title: isOne ? names[0]! : title,
    ...(isOne && { pattern: title }),
    cutFor: cutForText(toCut, order),
    paper: order.paper,
    ...(order.margins !== undefined && { margins: order.margins }),
    unit,
    rows: shownRows(cutOut, order.bySection),
    plans: cutOut.plans,
    layers: order.layers,
    cut: order.cut,
    buying: order.plan,
  });
  if (!laid.ok) return complain(io, laid.problem, order.file);
  const fonts = await io.fonts();
  const problem = await writeWhole([{ path: out, content: await writePdf(laid.value, fonts) }]);
  if (problem !== null) return complain(io, problem.problem, problem.path);
  for (const note of [...notes, ...printable(laid.value, fonts).notes]) io.out(`${oneLine(note)}\n`);
  const { sheets, paper } = laid.value;
  io.out(`Wrote ${out}: ${counted(sheets.length, 'page', 'pages')}, ${paper.label}.\n`);
  return 0;
}
