/**
 * How far a long job is. Called between foundations or sheets, on the same thread; what it throws ends the job, so a
 * function that throws is how a job is cancelled.
 *
 * @param done of `of` steps
 * @param what is being done
 */
export type Progress = (
  done: number,
  of: number,
  what: 'drawing' | 'packing' | 'saving sheets' | 'writing',
) => void;
