import { type Call, parseCall } from './call.ts';
import { type Command, helpOf, optionsOf } from './command.ts';
import { checkPage } from './commands/check-page.ts';
import { cutting } from './commands/cutting.ts';
import { demo } from './commands/demo.ts';
import { foundations } from './commands/foundations.ts';
import { sewing } from './commands/sewing.ts';
import { badCall, complain } from './complaint.ts';
import type { Io, Status } from './io.ts';

const COMMANDS: readonly Command[] = [sewing, foundations, checkPage, cutting, demo];

/** Commands that are to come: whoever reads of them elsewhere is told so. */
const NOT_YET = ['booklet'];

/**
 * Runs the command line.
 *
 * @param argv what was typed after the program's name
 */
export async function run(argv: readonly string[], io: Io): Promise<Status> {
  const [name, ...rest] = argv;
  if (name === '--help' || name === '-h' || name === 'help') {
    io.out(HELP);
    return 0;
  }
  const seeHelp = 'See "seamwright --help"';
  if (name === undefined) return complain(io, badCall('', 'No command is given', seeHelp).problem);
  if (NOT_YET.includes(name))
    return complain(io, badCall('', `The command "${name}" is not in this version`, seeHelp).problem);
  const command = COMMANDS.find((each) => each.name === name);
  if (command === undefined)
    return complain(io, badCall('', `There is no command "${name}"`, seeHelp).problem);

  // Help is asked for most when the rest of the call is wrong.
  const options = rest.includes('--') ? rest.slice(0, rest.indexOf('--')) : rest;
  if (options.includes('--help') || options.includes('-h')) {
    io.out(helpOf(command));
    return 0;
  }
  const call = parseCall(command.name, optionsOf(command), rest);
  return call.ok ? command.run(call.value satisfies Call, io) : complain(io, call.problem);
}

const HELP = [
  'seamwright COMMAND …',
  '',
  'Checks quilt blocks for foundation piecing, prints their foundations, says what to cut.',
  '',
  ...COMMANDS.map(({ name, summary }) => `  ${name.padEnd(13)}${summary}`),
  '',
  '"seamwright COMMAND --help" says the rest.',
  '',
  'Exit status: 0 done; 1 done, but the answer is "no"; 2 the input or the call is',
  'unusable, which one line on standard error explains.',
  '',
].join('\n');
