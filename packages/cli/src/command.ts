import type { Call, Option } from './call.ts';
import type { Io, Status } from './io.ts';

/** A command of the command line. */
export interface Command {
  readonly name: string;
  /** What it is called with, e.g. `FILE --out F.pdf`. */
  readonly usage: string;
  /** One line. */
  readonly summary: string;
  readonly options: readonly Option[];
  /** What else there is to know, in lines of at most 80 characters. */
  readonly notes: string;
  readonly run: (call: Call, io: Io) => Promise<Status>;
}

const HELP_OPTION: Option = { name: 'help', says: 'this text' };

/** All options that a command takes. */
export const optionsOf = (command: Command): readonly Option[] => [...command.options, HELP_OPTION];

export function helpOf(command: Command): string {
  const rows = optionsOf(command).map(
    ({ name, value, says }) => [`--${name}${value === undefined ? '' : ` ${value}`}`, says] as const,
  );
  const width = Math.max(...rows.map(([left]) => left.length)) + 2;
  const indent = ' '.repeat(width + 2);
  return [
    `seamwright ${command.name} ${command.usage}`,
    '',
    command.summary,
    '',
    ...rows.map(([left, says]) => `  ${left.padEnd(width)}${says.replaceAll('\n', `\n${indent}`)}`),
    '',
    command.notes,
    '',
  ].join('\n');
}
