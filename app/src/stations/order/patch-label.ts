import type { Study } from '../../study/study.ts';

/** `A3`, or `A3 (sail)` where the maker gave it words. */
export function patchLabel(study: Study, patch: number): string {
  const note = study.records[patch]?.note ?? '';
  return note === '' ? study.names[patch]! : `${study.names[patch]} (${note})`;
}

/** The index of the patch with this record; -1 where it is gone. */
export const patchOf = (study: Study, id: string): number =>
  study.records.findIndex((record) => record.id === id);
