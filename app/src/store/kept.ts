/** What the browser keeps of the maker's ways of working, between visits and for all tabs: an object of fields under a key. */

/** What is kept under a key; nothing where storage is switched off, or holds something else's text under our name. */
export function keptFields(key: string): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** Keeps these fields; others stay as they are kept, by whichever tab. Where nothing can be kept, they hold for this visit. */
export function keepFields(key: string, fields: object): void {
  try {
    localStorage.setItem(key, JSON.stringify({ ...keptFields(key), ...fields }));
  } catch {
    // Storage is switched off, or full.
  }
}
