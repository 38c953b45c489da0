import {
  type BlockOfCloth,
  type CutOut,
  chartCsv,
  cuttingReport,
  shownRows,
  workOut,
} from '@seamwright/cloth';
import { boundingBox, type Result } from '@seamwright/geometry';
import { prettyJson } from '@seamwright/pattern';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { badCall, complain, oneLine } from '../complaint.ts';
import { type BlocksToCut, blocksToCut } from '../cutting/blocks-to-cut.ts';
import { clothsOf } from '../cutting/cloths.ts';
import { cuttingText } from '../cutting/cutting-text.ts';
import { CUTTING_OPTIONS, type CuttingOrder, readCuttingOrder } from '../cutting/order.ts';
import { withStep } from '../cutting/piece-options.ts';
import { writeChart } from '../cutting/write-chart.ts';
import { type Drawn, readDrawings } from '../drawings.ts';
import type { Io, Status } from '../io.ts';
import { reportText } from '../report-text.ts';

export const cutting: Command = {
  name: 'cutting',
  usage: 'FILE [--json|--csv|--out F.pdf] [options]',
  summary: 'Says what to cut for each patch, how to cut it from strips, and what to buy.',
  options: CUTTING_OPTIONS,
  notes: `FILE is a pattern file or an SVG drawing. All blocks of a pattern are cut together,
and its patches go by the names of their blocks: Lantern A1. Lengths are written
as 6, 6in, 15cm, 152.4mm, 1/4in or "2 3/8"; a number alone is inches.

Exit status: 0 done; 1 a block cannot be sewn, and nothing is cut, or a piece is
larger than its fabric, and all others are planned; 2 the file or the call is
unusable, and no file is written.`,
  run,
};

async function run(call: Call, io: Io): Promise<Status> {
  const asked = readCuttingOrder(call);
  if (!asked.ok) return complain(io, asked.problem);
  const { file, block } = asked.value;
  const read = await readDrawings(file, block);
  if (!read.ok) return complain(io, read.problem, file);
  const order: CuttingOrder = { ...asked.value, cut: withStep(asked.value.cut, read.value.unit) };
  const counted = blocksToCut(read.value, order);
  if (!counted.ok) return complain(io, counted.problem);
  const drawings = counted.value;
  if (order.width !== undefined && drawings.blocks.length > 1)
    return complain(
      io,
      badCall('cutting', '--width is the width of one block', 'Choose it by --block NAME').problem,
    );
  const stuck = drawings.blocks.filter(({ plan }) => plan.verdict === 'not sewable');
  if (stuck.length > 0) return sayStuck(stuck, drawings, order, io);

  const worked = await cutOut(drawings, order, io);
  if (!worked.ok) return complain(io, worked.problem, order.file);
  const { pieces, rows, plans } = worked.value;
  switch (order.form) {
    case 'json':
      io.out(`${prettyJson(cuttingReport(pieces, order.cut, rows, plans))}\n`);
      break;
    case 'csv':
      io.out(
        chartCsv(
          shownRows(worked.value, order.bySection),
          plans.map(({ cloth }) => cloth),
        ),
      );
      break;
    case 'pdf': {
      const status = await writeChart(order.out!, drawings, order, worked.value, io);
      if (status !== 0) return status;
      break;
    }
    case 'text':
      for (const note of drawings.notes) io.out(`${oneLine(note)}\n`);
      io.out(cuttingText(drawings, order, shownRows(worked.value, order.bySection), plans));
  }
  return plans.some(({ plan }) => plan.tooLarge.length > 0) ? 1 : 0;
}

/** A chart without the patches that no foundation holds would be too little to buy by. */
function sayStuck(stuck: readonly Drawn[], drawings: BlocksToCut, { form }: CuttingOrder, io: Io): Status {
  if (form === 'text') {
    for (const block of stuck) io.out(reportText(block, drawings.unit));
    io.out('Nothing is cut for what cannot be sewn.\n');
    return 1;
  }
  for (const { name } of stuck)
    io.complain(
      oneLine(`"${name}" cannot be sewn with straight seams, so nothing is cut; "sewing" says why`),
    );
  return 1;
}

function cutOut(
  drawings: BlocksToCut,
  order: CuttingOrder,
  io: Io,
): Promise<Result<CutOut>> | Result<CutOut> {
  const { colourway, plan } = order;
  const dressed = clothsOf(drawings, { colourway, usableWidth: plan.usableWidth });
  if (!dressed.ok) return dressed;
  const { cloths, fabricOf } = dressed.value;
  const blocks = drawings.blocks.map(
    ({ name, arrangement, plan: sewing, records, copies, mirrored }): BlockOfCloth => {
      const { minX, maxX } = boundingBox(arrangement.outline);
      return {
        ...(drawings.blocks.length > 1 && { name }),
        arrangement,
        plan: sewing,
        fabrics: arrangement.patches.map(({ index }) => fabricOf(records[index])),
        copies,
        mirrored,
        scale: order.width === undefined ? 1 : order.width / (maxX - minX),
      };
    },
  );
  return workOut(blocks, cloths, order, io.solver);
}
