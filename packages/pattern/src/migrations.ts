/** Brings a document of version `from` to the next one. What it gets has passed for JSON, and for nothing more. */
export interface Migration {
  readonly from: number;
  /** What changed for the maker, in one sentence; null when nothing that can be seen. */
  readonly note: string | null;
  readonly migrate: (document: object) => object;
}

/** The version that this program writes. */
export const CURRENT_VERSION = 1;

/**
 * One for every version before {@link CURRENT_VERSION}, oldest first. None yet: to make version 2, raise the number,
 * change the schema, and add here what turns a document of version 1 into one of version 2.
 */
export const MIGRATIONS: readonly Migration[] = [];

/**
 * Takes a document through every migration from its own version on. The caller has made sure that the
 * version is not above the newest one; a gap in the chain is a bug of ours and throws.
 *
 * @returns the document as the newest version has it, and what the maker should be told
 */
export function bringUp(
  document: object,
  version: number,
  migrations: readonly Migration[] = MIGRATIONS,
  newest: number = CURRENT_VERSION,
): { document: object; notes: string[] } {
  const notes: string[] = [];
  let current = document;
  for (let from = version; from < newest; from++) {
    const migration = migrations.find((m) => m.from === from);
    if (migration === undefined) throw new Error(`No migration from version ${from}`);
    current = migration.migrate(current);
    if (migration.note !== null) notes.push(migration.note);
  }
  return { document: current, notes };
}
