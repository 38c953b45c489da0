import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fail } from '@seamwright/geometry';
import { prettyJson } from '@seamwright/pattern';
import { sewingReport } from '@seamwright/sewing';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { badCall, complain, oneLine } from '../complaint.ts';
import { type Drawings, type Drawn, readDrawings } from '../drawings.ts';
import { type Io, type Status, worst } from '../io.ts';
import { nameOf } from '../read-file.ts';
import { reportText } from '../report-text.ts';
import { isSameFile, type NewFile, writeWhole } from '../write-files.ts';

export const sewing: Command = {
  name: 'sewing',
  usage: 'FILE… [--json] [--block NAME] [--out DIR]',
  summary: 'Says whether blocks can be sewn, on which foundations, in which order.',
  options: [
    { name: 'json', says: 'print the report as JSON (of one FILE)' },
    { name: 'block', value: 'NAME', says: 'only the block of that name' },
    {
      name: 'out',
      value: 'DIR',
      says: 'write the reports as JSON to DIR/NAME.json, where NAME is the file’s,\nor DIR/NAME-BLOCK.json where a pattern has several blocks',
    },
  ],
  notes: `FILE is a pattern file or an SVG drawing. --json prints the report of a pattern's
first block when there are several and no --block. Of several files, those that
can be read are reported, and the others are named on standard error.

A block that straight seams do not suffice for is reported with partial seams,
where these do, and its interlocked seams as what there is to know.

Exit status: 0 all can be sewn; 1 some cannot; 2 a file or the call is unusable.`,
  run,
};

async function run(call: Call, io: Io): Promise<Status> {
  const { files } = call;
  if (files.length === 0) return complain(io, badCall('sewing', 'No FILE is given').problem);
  if (call.has('json') && files.length > 1) {
    return complain(io, fail('--json prints the report of one FILE', '', 'Give one, or --out DIR').problem);
  }
  const folder = call.text('out');
  const writer = folder === undefined ? null : new ReportWriter(folder, files);
  const statuses: Status[] = [];
  for (const file of files) {
    const read = await readDrawings(file, call.text('block'));
    if (!read.ok) {
      statuses.push(complain(io, read.problem, file));
      continue;
    }
    const { value } = read;
    const written = (await writer?.write(file, value, io)) ?? 0;
    if (written !== 2) show(value, call.has('json'), io);
    statuses.push(written, ...value.blocks.map(statusOf));
  }
  return worst(statuses);
}

const statusOf = ({ plan }: Drawn): Status => (plan.verdict === 'not sewable' ? 1 : 0);

function show({ blocks, unit, notes }: Drawings, json: boolean, io: Io): void {
  const [first, ...others] = blocks;
  if (json && first !== undefined) {
    io.out(jsonOf(first));
    if (others.length > 0) {
      io.complain(
        oneLine(
          `This is the report of "${first.name}", the first of ${blocks.length} blocks; --block NAME chooses another`,
        ),
      );
    }
    return;
  }
  for (const note of notes) io.out(`${note}\n`);
  for (const block of blocks) io.out(reportText(block, unit));
}

const jsonOf = ({ arrangement, plan, findings }: Drawn): string =>
  `${prettyJson(sewingReport(arrangement, plan, findings))}\n`;

/** Writes reports into one folder, never over a file that is being read, never two to one name. */
class ReportWriter {
  private readonly taken = new Map<string, string>();

  constructor(
    private readonly folder: string,
    private readonly inputs: readonly string[],
  ) {}

  async write(file: string, { blocks }: Drawings, io: Io): Promise<Status> {
    const reports: NewFile[] = reportNames(nameOf(file), blocks).map((name, i) => ({
      path: join(this.folder, `${name}.json`),
      content: jsonOf(blocks[i]!),
    }));
    for (const { path } of reports) {
      const input = this.inputs.find((other) => isSameFile(other, path));
      if (input !== undefined) {
        return complain(
          io,
          fail('Its report would take the place of this file', '', 'Choose another DIR').problem,
          input,
        );
      }
      const other = this.taken.get(path);
      if (other !== undefined && other !== file) {
        return complain(
          io,
          fail(
            `Its report would take the place of that of ${other}`,
            '',
            'Report one of them into another DIR',
          ).problem,
          file,
        );
      }
      this.taken.set(path, file);
    }
    try {
      await mkdir(this.folder, { recursive: true });
    } catch {
      return complain(io, fail('This folder cannot be made', '', 'Choose another DIR').problem, this.folder);
    }
    const problem = await writeWhole(reports);
    return problem === null ? 0 : complain(io, problem.problem, problem.path);
  }
}

/** NAME for one block; NAME-BLOCK for several, with a number where two blocks have one name. */
export function reportNames(name: string, blocks: readonly { readonly name: string }[]): string[] {
  if (blocks.length === 1) return [name];
  const taken = new Set<string>();
  return blocks.map((block) => {
    const plain =
      block.name
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-|-$/g, '') || 'block';
    let unique = `${name}-${plain}`;
    for (let n = 2; taken.has(unique); n++) unique = `${name}-${plain}-${n}`;
    taken.add(unique);
    return unique;
  });
}
