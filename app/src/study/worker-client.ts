import { type Remote, wrap } from 'comlink';
import type { StudyWorker } from './study.worker.ts';

let remote: Remote<StudyWorker> | null = null;

/** The worker that computes, started when first asked. */
export function studyWorker(): Remote<StudyWorker> {
  remote ??= wrap<StudyWorker>(
    new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module', name: 'study' }),
  );
  return remote;
}
