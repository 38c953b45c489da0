/**
 * What can fail in the ordinary course (a file cut short, a size of 0) comes back as a value; exceptions are
 * for bugs.
 */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

/** Why something could not be used, in the three parts that every message of ours has. */
export interface Problem {
  /** What is wrong, e.g. `The outline crosses itself`. No full stop. */
  readonly what: string;
  /** The place in the input, e.g. `between corners 2 and 4`, `line 12`; empty when there is no narrower place. */
  readonly where: string;
  /** What the maker can do, e.g. `Move one of these corners`. No full stop. */
  readonly remedy: string;
}

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

export const fail = (what: string, where: string, remedy: string): { ok: false; problem: Problem } => ({
  ok: false,
  problem: { what, where, remedy },
});

/** The problem as one sentence: what (where): remedy. */
export function sentence(problem: Problem): string {
  const place = problem.where === '' ? '' : ` (${problem.where})`;
  return `${problem.what}${place}. ${problem.remedy}.`;
}
