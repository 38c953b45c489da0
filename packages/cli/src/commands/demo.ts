import { demoPattern, writePattern } from '@seamwright/pattern';
import type { Call } from '../call.ts';
import type { Command } from '../command.ts';
import { badCall, complain } from '../complaint.ts';
import type { Io, Status } from '../io.ts';
import { writeWhole } from '../write-files.ts';

export const demo: Command = {
  name: 'demo',
  usage: '[--out FILE]',
  summary: 'Writes the demo pattern: blocks of a quilt for a harbour town’s reading room.',
  options: [{ name: 'out', value: 'FILE', says: 'the file to write; printed unless you say otherwise' }],
  notes: 'Exit status: 0 done; 2 the call is unusable, nothing is written.',
  run,
};

async function run(call: Call, io: Io): Promise<Status> {
  if (call.files.length > 0)
    return complain(
      io,
      badCall('demo', 'The command takes no FILE', 'Name the file to write by --out').problem,
    );
  const text = writePattern(demoPattern());
  const out = call.text('out');
  if (out === undefined) {
    io.out(text);
    return 0;
  }
  const problem = await writeWhole([{ path: out, content: text }]);
  if (problem !== null) return complain(io, problem.problem, problem.path);
  io.out(`Wrote ${out}\n`);
  return 0;
}
