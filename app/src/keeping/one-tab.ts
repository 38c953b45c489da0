/**
 * One kept work is open in one tab at a time: two would overwrite each other. Held as a Web Lock, which the browser
 * itself lets go of when the tab closes or crashes.
 */
let held: { readonly id: string; readonly letGo: () => void } | null = null;

const name = (id: string): string => `seamwright work ${id}`;

/** Milliseconds that a tab which is just going away may still hold its lock. */
const PATIENCE = 600;

/** Takes the work for this tab, and lets go of the one before. False: another tab has it. */
export async function takeForThisTab(id: string): Promise<boolean> {
  // Browsers without Web Locks, and pages that are not served securely: as good as the only tab.
  if (navigator.locks === undefined) return true;
  if (held?.id === id) return true;
  held?.letGo();
  held = null;
  return new Promise((resolve, reject) => {
    navigator.locks
      .request(name(id), { signal: AbortSignal.timeout(PATIENCE) }, () => {
        resolve(true);
        return new Promise<void>((letGo) => {
          held = { id, letGo };
        });
      })
      .catch((error: unknown) => {
        if (error instanceof DOMException && error.name === 'TimeoutError') resolve(false);
        else reject(error);
      });
  });
}
