import { type Computing, computing } from './computing.ts';
import type { CutOutWorker } from './cut-out.worker.ts';

/** Starts a worker that works out what is cut and bought. */
export const startCutting = (): Computing<CutOutWorker> =>
  computing(new Worker(new URL('./cut-out.worker.ts', import.meta.url), { type: 'module', name: 'cutting' }));
