import { extname } from 'node:path';
import {
  ALLOWANCE_RANGE,
  boundingBox,
  fail,
  ok,
  type Problem,
  parseLength,
  type Result,
  SIZE_RANGE,
} from '@seamwright/geometry';
import {
  layFoundations,
  PAPERS,
  type PagePlan,
  type PaperName,
  printable,
  writePdf,
  writeSvg,
} from '@seamwright/pages';
import { bindPlans } from '../bind-plans.ts';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { badCall, complain, oneLine } from '../complaint.ts';
import { type Drawings, type Drawn, readDrawings } from '../drawings.ts';
import type { Io, Status } from '../io.ts';
import { counted, findingLines, reportText, verdictText } from '../report-text.ts';
import { isSameFile, type NewFile, writeWhole } from '../write-files.ts';

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
    { name: 'paper', value: 'PAPER', says: 'letter (unless you say otherwise) or a4' },
    {
      name: 'block',
      value: 'NAME',
      says: 'only the block of that name; all blocks unless you say otherwise',
    },
    { name: 'width', value: 'W', says: 'the finished width of the block; as drawn unless you say otherwise' },
    { name: 'allowance', value: 'A', says: 'the seam allowance; 1/4in unless you say otherwise' },
    {
      name: 'copies',
      value: 'N',
      says: 'how many of the block are to be sewn, printed on each foundation;\n1 unless you say otherwise',
    },
    {
      name: 'partial-seams',
      says: 'allow partial seams where straight ones do not suffice; a pattern may\nallow them itself',
    },
    {
      name: 'share-templates',
      says: 'one foundation for sections that are turned copies of one another,\nwhich says how many to print; mirrored copies share one of their own',
    },
  ],
  notes: `FILE is a pattern file or an SVG drawing. Lengths are written as 6, 6in, 15cm,
152.4mm, 1/4in or "2 3/8"; a number alone is inches.

Exit status: 0 written; 1 the block cannot be sewn, or only with partial seams
that nobody allowed, nothing is written; 2 the file or the call is unusable,
nothing is written.`,
  run,
};

/** What was asked for, read and checked. */
interface Order {
  readonly file: string;
  readonly out: string;
  readonly form: 'pdf' | 'svg';
  readonly paper: PaperName;
  readonly width: number | undefined;
  readonly allowance: number | undefined;
  readonly copies: number;
  readonly shareTemplates: boolean;
  readonly partialSeams: boolean;
}

async function run(call: Call, io: Io): Promise<Status> {
  const asked = readOrder(call);
  if (!asked.ok) return complain(io, asked.problem);
  const order = asked.value;
  const read = await readDrawings(order.file, call.text('block'));
  if (!read.ok) return complain(io, read.problem, order.file);
  const drawings = read.value;
  if (order.width !== undefined && drawings.blocks.length > 1) {
    return complain(
      io,
      badCall('foundations', '--width is the width of one block', 'Choose it by --block NAME').problem,
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

  const paper = (call.text('paper') ?? 'letter').toLowerCase();
  if (!isPaper(paper))
    return bad(`There is no paper "${paper}"`, `Choose ${Object.keys(PAPERS).join(' or ')}`);
  const width = lengthOf(call, 'width', SIZE_RANGE);
  if (!width.ok) return width;
  const allowance = lengthOf(call, 'allowance', ALLOWANCE_RANGE);
  if (!allowance.ok) return allowance;
  const copies = call.text('copies') ?? '1';
  if (!/^\d+$/.test(copies))
    return bad(`--copies ${copies} is no whole number`, 'Give how many of the block are to be sewn');
  return ok({
    file,
    out,
    form,
    paper,
    width: width.value,
    allowance: allowance.value,
    copies: Number(copies),
    shareTemplates: call.has('share-templates'),
    partialSeams: call.has('partial-seams'),
  });
}

const isPaper = (name: string): name is PaperName => Object.hasOwn(PAPERS, name);

function lengthOf(call: Call, name: string, range: typeof SIZE_RANGE): Result<number | undefined> {
  const text = call.text(name);
  if (text === undefined) return ok(undefined);
  const length = parseLength(text, 'in', range);
  return length.ok ? length : fail(`--${name}: ${length.problem.what}`, '', length.problem.remedy);
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
      sizes: [{ copies: order.copies, scale: order.width === undefined ? 1 : order.width / (maxX - minX) }],
      shareTemplates: order.shareTemplates,
      unit,
      ...(order.allowance !== undefined && { allowance: order.allowance }),
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
  io.out(
    `Wrote ${files.map(({ path }) => path).join(', ')}: ${pages}, ${plan.paper.label}. Print at 100 %, no scaling.\n`,
  );
  return 0;
}

/** F.svg, F-2.svg, F-3.svg … */
export const pagePath = (out: string, index: number): string =>
  index === 0 ? out : out.replace(/(\.[^.]+)$/, `-${index + 1}$1`);
