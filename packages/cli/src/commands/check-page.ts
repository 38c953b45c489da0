import { formatLength, ok, type Result } from '@seamwright/geometry';
import { type CheckPageJob, checkPage as layCheckPage } from '@seamwright/pages';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { complain } from '../complaint.ts';
import type { Io, Status } from '../io.ts';
import { OptionReader } from '../option-reader.ts';
import { OUT_OPTION, type OutOrder, PAGE_OPTIONS, readOut, readPage } from '../page-options.ts';
import { PRINTER_OPTION, readPrinter } from '../printer-option.ts';
import { writePages } from '../write-pages.ts';

export const checkPage: Command = {
  name: 'check-page',
  usage: '--out F.pdf|F.svg [options]',
  summary: 'Writes a page with check squares and rulers, to measure a printer by.',
  options: [
    { ...OUT_OPTION, says: 'the file to write: F.pdf or F.svg' },
    ...PAGE_OPTIONS,
    { name: 'unit', value: 'UNIT', says: 'in, or cm: the unit of the rulers' },
    { ...PRINTER_OPTION, says: `${PRINTER_OPTION.says}, to see that it is true then` },
  ],
  notes: `Print it at 100 % and measure. What should be 1 in and measures 0.973 in across
and 0.989 in down is --printer 97.3%x98.9% for "foundations".

Exit status: 0 written; 2 the call is unusable, nothing is written.`,
  run,
};

async function run(call: Call, io: Io): Promise<Status> {
  const asked = readOrder(call);
  if (!asked.ok) return complain(io, asked.problem);
  const { job, to } = asked.value;
  const laid = layCheckPage(job);
  if (!laid.ok) return complain(io, laid.problem);
  const { plan, rulers } = laid.value;
  const written = await writePages(plan, to, io);
  if (!written.ok) return complain(io, written.problem, written.path);
  const [across, down] = [rulers.across, rulers.down].map((length) => formatLength(length, job.unit));
  io.out(
    `Wrote ${written.paths.join(', ')}: 1 page, ${plan.paper.label}, with a ruler of ${across} across and one of ${down} down. Print at 100 %, no scaling.\n`,
  );
  return 0;
}

/** What was asked for, read and checked. */
interface Order {
  readonly job: CheckPageJob & Required<Pick<CheckPageJob, 'unit'>>;
  readonly to: OutOrder;
}

function readOrder(call: Call): Result<Order> {
  const read = new OptionReader(call, 'check-page');
  if (call.files.length > 0) read.wrong('The command takes no FILE', 'Name the file to write by --out');
  const to = readOut(read);
  const job = { ...readPage(read), ...readPrinter(read), unit: read.word('unit', ['in', 'cm']) };
  return read.problem ?? ok({ job, to });
}
