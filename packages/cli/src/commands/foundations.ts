import { extname } from 'node:path';
import { boundingBox, fail, ok, type Problem, type Result } from '@seamwright/geometry';
import { layFoundations, type PagePlan, printable, printsOf, writePdf, writeSvg } from '@seamwright/pages';
import { bindPlans } from '../bind-plans.ts';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { badCall, complain, oneLine } from '../complaint.ts';
import { type Drawings, type Drawn, readDrawings } from '../drawings.ts';
import type { Io, Status } from '../io.ts';
import { counted, findingLines, reportText, verdictText } from '../report-text.ts';
import { readSheetOrder, SHEET_OPTIONS, type SheetOrder } from '../sheet-options.ts';
import { isSameFile, type NewFile, writeWhole } from '../write-files.ts';

/** Sheets of paper that nobody prints without having been asked: two packs. */
const MANY_SHEETS = 1000;

export const foundations: Command = {
  name: 'foundations',
  usage: 'FILE --out F.pdf|F.svg [options]',
  summary: 'Writes true-size foundation pages, mirrored, ready to print and sew on.',
  options: [
    {
      name: 'out',
      value: 'F',
      says: 'the file to write: F.pdf, or F.svg for one SVG file a page\n(F.svg, F-2.svg, F-3.svg …)',
    },
    {
      name: 'block',
      value: 'NAME',
      says: 'only the block of that name; all blocks unless you say otherwise',
    },
    ...SHEET_OPTIONS,
    {
      name: 'partial-seams',
      says: 'allow partial seams where straight ones do not suffice; a pattern may\nallow them itself',
    },
    {
      name: 'share-templates',
      says: 'one foundation for sections that are turned copies of one another,\nwhich says how many to print; mirrored copies share one of their own',
    },
    { name: 'yes', says: `write them even if that is more than ${MANY_SHEETS} sheets to print` },
  ],
  notes: `FILE is a pattern file or an SVG drawing. Lengths are written as 6, 6in, 15cm,
152.4mm, 1/4in or "2 3/8"; a number alone is inches.

Exit status: 0 written; 1 the block cannot be sewn, or only with partial seams
that nobody allowed, nothing is written; 2 the file or the call is unusable,
nothing is written.`,
  run,
};

/** What was asked for, read and checked. */
interface Order extends SheetOrder {
  readonly file: string;
  readonly out: string;
  readonly form: 'pdf' | 'svg';
  readonly shareTemplates: boolean;
  readonly partialSeams: boolean;
  /** Whether any number of sheets is all right. */
  readonly yes: boolean;
}

async function run(call: Call, io: Io): Promise<Status> {
  const asked = readOrder(call);
  if (!asked.ok) return complain(io, asked.problem);
  const order = asked.value;
  const read = await readDrawings(order.file, call.text('block'));
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
  const laid = layAll(drawings, order);
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

function readOrder(call: Call): Result<Order> {
  const bad = (what: string, remedy?: string) => badCall('foundations', what, remedy);
  const [file, ...others] = call.files;
  if (file === undefined) return bad('No FILE is given');
  if (others.length > 0) return bad('More than one FILE is given', 'Give one at a time');
  const out = call.text('out');
  if (out === undefined) return bad('No --out is given', 'Name the file to write, such as --out block.pdf');
  const form = extname(out).toLowerCase().slice(1);
  if (form !== 'pdf' && form !== 'svg')
    return bad(`--out ${out} ends neither in .pdf nor in .svg`, 'Name it so');
  if (isSameFile(out, file)) return bad('--out is the FILE itself', 'Choose another name');

  const sheets = readSheetOrder(call);
  if (!sheets.ok) return sheets;
  return ok({
    file,
    out,
    form,
    ...sheets.value,
    shareTemplates: call.has('share-templates'),
    partialSeams: call.has('partial-seams'),
    yes: call.has('yes'),
  });
}

/** All blocks of the file, one after the other. */
function layAll({ blocks, title, unit }: Drawings, order: Order): Result<PagePlan> {
  const plans: PagePlan[] = [];
  for (const { name, arrangement, plan } of blocks) {
    const { minX, maxX } = boundingBox(arrangement.outline);
    const laid = layFoundations({
      title: name,
      pattern: title,
      arrangement,
      plan,
      paper: order.paper,
      sizes: order.sizes.map((size) => ({
        scale: size.width === undefined ? size.scale : size.width / (maxX - minX),
        copies: order.copies,
        mirrored: order.mirrored,
      })),
      shareTemplates: order.shareTemplates,
      unit,
      ...(order.allowance !== undefined && { allowance: order.allowance }),
      ...(order.margins !== undefined && { margins: order.margins }),
      ...(order.printer !== undefined && { printer: order.printer }),
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

async function write(plan: PagePlan, { blocks, notes }: Drawings, order: Order, io: Io): Promise<Status> {
  const fonts = await io.fonts();
  const files: NewFile[] =
    order.form === 'pdf'
      ? [{ path: order.out, content: await writePdf(plan, fonts) }]
      : plan.sheets.map((_, i) => ({ path: pagePath(order.out, i), content: writeSvg(plan, i) }));
  const own = files.find(({ path }) => isSameFile(path, order.file));
  if (own !== undefined)
    return complain(
      io,
      fail('A page would take the place of the FILE', '', 'Choose another --out').problem,
      own.path,
    );
  const problem = await writeWhole(files);
  if (problem !== null) return complain(io, problem.problem, problem.path);

  for (const note of [...notes, ...printable(plan, fonts).notes]) io.out(`${note}\n`);
  for (const block of blocks) {
    io.out(
      `${[`${block.name} ${verdictText(block.plan)}.`, ...findingLines(block)].map(oneLine).join('\n  ')}\n`,
    );
  }
  const pages = counted(plan.sheets.length, 'page', 'pages');
  const { sheets } = printsOf(plan);
  const inAll = sheets > plan.sheets.length ? `, ${sheets} sheets to print in all` : '';
  io.out(
    `Wrote ${files.map(({ path }) => path).join(', ')}: ${pages}, ${plan.paper.label}${inAll}. Print at 100 %, no scaling.\n`,
  );
  return 0;
}

/** F.svg, F-2.svg, F-3.svg … */
export const pagePath = (out: string, index: number): string =>
  index === 0 ? out : out.replace(/(\.[^.]+)$/, `-${index + 1}$1`);
