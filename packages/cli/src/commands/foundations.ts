import { PLAIN_RULES } from '@seamwright/cloth';
import { boundingBox, ok, type Problem, type Result } from '@seamwright/geometry';
import { type FoundationJob, layFoundations, type PagePlan, patchFabrics, printsOf } from '@seamwright/pages';
import { bindPlans } from '../bind-plans.ts';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { badCall, complain, oneLine } from '../complaint.ts';
import { clothsOf } from '../cutting/cloths.ts';
import { withStep } from '../cutting/piece-options.ts';
import { type Drawings, type Drawn, readDrawings } from '../drawings.ts';
import {
  FOUNDATION_OPTIONS,
  type FoundationOrder,
  MANY_SHEETS,
  readFoundationOrder,
} from '../foundations/order.ts';
import type { Io, Status } from '../io.ts';
import { counted, findingLines, reportText, verdictText } from '../report-text.ts';
import { writePages } from '../write-pages.ts';

export const foundations: Command = {
  name: 'foundations',
  usage: 'FILE --out F.pdf|F.svg [options]',
  summary: 'Writes true-size foundation pages, mirrored, ready to print and sew on.',
  options: FOUNDATION_OPTIONS,
  notes: `FILE is a pattern file or an SVG drawing. Lengths are written as 6, 6in, 15cm,
152.4mm, 1/4in or "2 3/8"; a number alone is inches.

Exit status: 0 written; 1 the block cannot be sewn, or only with partial seams
that nobody allowed, nothing is written; 2 the file or the call is unusable,
nothing is written.`,
  run,
};

async function run(call: Call, io: Io): Promise<Status> {
  const asked = readFoundationOrder(call);
  if (!asked.ok) return complain(io, asked.problem);
  const order = asked.value;
  const read = await readDrawings(order.file, order.block);
  if (!read.ok) return complain(io, read.problem, order.file);
  const drawings = read.value;
  if (drawings.blocks.length > 1 && order.sizes.some(({ width }) => width !== undefined)) {
    const option = call.text('width') === undefined ? '--sizes has widths' : '--width is the width';
    return complain(
      io,
      badCall('foundations', `${option} of one block`, 'Choose it by --block NAME').problem,
    );
  }
  const mayPrint = ({ plan, partialSeams }: Drawn) =>
    plan.verdict === 'partial seams' ? partialSeams || order.partialSeams : plan.verdict !== 'not sewable';
  const stuck = drawings.blocks.filter((block) => !mayPrint(block));
  if (stuck.length > 0) {
    for (const block of stuck) io.out(reportText(block, drawings.unit));
    if (stuck.every(({ plan }) => plan.verdict === 'partial seams'))
      io.out('Nothing is written: --partial-seams allows partial seams.\n');
    return 1;
  }
  const dressed = dressing(drawings, order);
  if (!dressed.ok) return complain(io, dressed.problem, order.file);
  const laid = layAll(drawings, order, dressed.value);
  if (!laid.ok) return complain(io, laid.problem, order.file);
  const { sheets } = printsOf(laid.value);
  if (sheets > MANY_SHEETS && !order.yes)
    return complain(
      io,
      badCall(
        'foundations',
        `That is ${sheets} sheets to print`,
        'Give --yes if they are wanted, or ask for fewer copies',
      ).problem,
      order.file,
    );
  return write(laid.value, drawings, order, io);
}

/** What foundations say of a block's patches. */
type Sayings = (block: Drawn) => Pick<FoundationJob, 'fabrics' | 'cutting'>;

function dressing(drawings: Drawings, { colourway, fabrics, cutSizes }: FoundationOrder): Result<Sayings> {
  const dressed = clothsOf(drawings, { colourway, usableWidth: PLAIN_RULES.usableWidth });
  if (!dressed.ok) return dressed;
  const { cloths, fabricOf } = dressed.value;
  return ok(({ arrangement, records }) => {
    const chosen = arrangement.patches.map(({ index }) => fabricOf(records[index]));
    return {
      ...(fabrics && { fabrics: patchFabrics(drawings.fabrics, chosen) }),
      ...(cutSizes !== null && {
        cutting: {
          rules: withStep(cutSizes, drawings.unit),
          cloths: chosen.map((id) => cloths.find((cloth) => cloth.id === id) ?? null),
        },
      }),
    };
  });
}

/** All blocks of the file, one after the other. */
function layAll(
  { blocks, title, unit }: Drawings,
  order: FoundationOrder,
  sayings: Sayings,
): Result<PagePlan> {
  const plans: PagePlan[] = [];
  for (const block of blocks) {
    const { name, arrangement, plan } = block;
    const { minX, maxX } = boundingBox(arrangement.outline);
    const laid = layFoundations({
      ...order.pages,
      title: name,
      pattern: title,
      arrangement,
      plan,
      sizes: order.sizes.map((size) => ({
        scale: size.width === undefined ? size.scale : size.width / (maxX - minX),
        copies: order.copies,
        mirrored: order.mirrored,
      })),
      unit,
      ...sayings(block),
    });
    if (!laid.ok) return { ok: false, problem: inBlock(laid.problem, name, blocks) };
    plans.push(laid.value);
  }
  return ok(bindPlans(title, plans));
}

const inBlock = ({ what, where, remedy }: Problem, name: string, blocks: readonly Drawn[]): Problem => {
  const block = blocks.length > 1 ? [`block "${name}"`] : [];
  return { what, where: [...block, where].filter((part) => part !== '').join(', '), remedy };
};

async function write(plan: PagePlan, drawings: Drawings, order: FoundationOrder, io: Io): Promise<Status> {
  const written = await writePages(plan, order, io, order.file);
  if (!written.ok) return complain(io, written.problem, written.path);
  const { blocks, fabrics } = drawings;
  for (const note of [...drawings.notes, ...written.notes]) io.out(`${oneLine(note)}\n`);
  if (order.fabrics && fabrics.length === 0) io.out('There are no fabrics in the file, so none is named.\n');
  for (const block of blocks) {
    io.out(
      `${[`${block.name} ${verdictText(block.plan)}.`, ...findingLines(block, drawings.unit)].map(oneLine).join('\n  ')}\n`,
    );
  }
  const pages = counted(plan.sheets.length, 'page', 'pages');
  const { sheets } = printsOf(plan);
  const inAll = sheets > plan.sheets.length ? `, ${sheets} sheets to print in all` : '';
  io.out(
    `Wrote ${written.paths.join(', ')}: ${pages}, ${plan.paper.label}${inAll}. Print at 100 %, no scaling.\n`,
  );
  return 0;
}
