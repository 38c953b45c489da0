import { parseArgs } from 'node:util';
import { ok, type Result } from '@seamwright/geometry';
import { badCall } from './complaint.ts';

/** One option of a command, for parsing and for its help. */
export interface Option {
  readonly name: string;
  /** What stands for its value in the help; left out for a switch. */
  readonly value?: string;
  readonly says: string;
}

/** What was typed after the command's name. */
export interface Call {
  readonly files: readonly string[];
  /** The value of an option; undefined when it was not given. */
  readonly text: (name: string) => string | undefined;
  /** Whether a switch was given. */
  readonly has: (name: string) => boolean;
}

export function parseCall(
  command: string,
  options: readonly Option[],
  argv: readonly string[],
): Result<Call> {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      options: Object.fromEntries(
        options.map(
          ({ name, value }) => [name, { type: value === undefined ? 'boolean' : 'string' }] as const,
        ),
      ),
      allowPositionals: true,
      strict: true,
      tokens: false,
    });
    const given = values as Record<string, string | boolean | undefined>;
    return ok({
      files: positionals,
      text: (name) => given[name] as string | undefined,
      has: (name) => given[name] === true,
    });
  } catch (error) {
    return badCall(command, complaintOf(error as NodeJS.ErrnoException));
  }
}

/** Node's own messages run over several lines; their first says what is wrong. */
function complaintOf(error: NodeJS.ErrnoException): string {
  const option = /'(?:-\w, )?(-[^ '=]*)/.exec(error.message)?.[1];
  switch (error.code) {
    case 'ERR_PARSE_ARGS_UNKNOWN_OPTION':
      return `There is no option ${option}`;
    case 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE':
      return /ambiguous/.test(error.message)
        ? `A value that begins with a dash is written ${option}=-…`
        : /does not take/.test(error.message)
          ? `${option} takes no value`
          : `${option} needs a value`;
    default:
      throw error;
  }
}
