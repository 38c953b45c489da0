import loadHighs from 'highs';
import type { LoadSolver } from '../src/buying/strips/least.ts';

let solver: ReturnType<typeof loadHighs> | undefined;

/** HiGHS, loaded once for all tests of a file. */
export const load: LoadSolver = () => {
  solver ??= loadHighs();
  return solver;
};
