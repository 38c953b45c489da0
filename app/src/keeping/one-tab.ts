/**
 * One kept work is open in one tab at a time: two would overwrite each other. Held as a Web Lock, which the browser
 * itself lets go of when the tab closes or crashes.
 */
let held: { readonly id: string; readonly letGo: () => void } | null = null;

const name = (id: string): string => `seamwright work ${id}`;

/** Milliseconds that a tab which is just going away may still hold its lock. */
const PATIENCE = 600;

/** The last taking: one after the other, so that of two works that are opened at once this tab does not hold both. */
let taking: Promise<unknown> = Promise.resolve();

/** Takes the work for this tab, and lets go of the one before. False: another tab has it. */
export function takeForThisTab(id: string): Promise<boolean> {
  const taken = taking.then(() => take(id));
  taking = taken;
  return taken;
}

async function take(id: string): Promise<boolean> {
  // Browsers without Web Locks, and pages that are not served securely: as good as the only tab.
  if (navigator.locks === undefined) return true;
  if (held?.id === id) return true;
  held?.letGo();
  held = null;
  return new Promise((resolve) => {
    navigator.locks
      .request(name(id), { signal: AbortSignal.timeout(PATIENCE) }, () => {
        resolve(true);
        return new Promise<void>((letGo) => {
          held = { id, letGo };
        });
      })
      // Anything but waiting in vain: the browser keeps nothing for pages, so no other tab keeps the work either.
      .catch((error: unknown) => resolve(!(error instanceof DOMException && error.name === 'TimeoutError')));
  });
}
