import { afterEach, expect, test, vi } from 'vitest';

/** Web Locks as far as they are used: one holder for each name, who waits is granted in turn or gives up. */
function locks() {
  const held = new Map<string, Promise<void>>();
  const request = async (
    name: string,
    { signal }: { signal: AbortSignal },
    granted: () => Promise<void>,
  ): Promise<void> => {
    const gaveUp = new Promise<never>((_, reject) => {
      signal.addEventListener('abort', () => reject(signal.reason));
    });
    gaveUp.catch(() => undefined);
    while (held.has(name)) await Promise.race([held.get(name), gaveUp]);
    const holding = granted();
    held.set(name, holding);
    await holding;
    held.delete(name);
  };
  return { held, request };
}

/** A tab: the module with a state of its own. */
async function tab(): Promise<(id: string) => Promise<boolean>> {
  vi.resetModules();
  return (await import('./one-tab.ts')).takeForThisTab;
}

afterEach(() => vi.unstubAllGlobals());

test('a work is in one tab at a time, and free when that goes on to another', async () => {
  vi.stubGlobal('navigator', { locks: locks() });
  const [first, second] = [await tab(), await tab()];
  expect(await first('boat')).toBe(true);
  expect(await second('boat')).toBe(false);
  expect(await first('lantern')).toBe(true);
  expect(await second('boat')).toBe(true);
});

test('of two works that are opened at once the tab holds the last alone', async () => {
  const manager = locks();
  vi.stubGlobal('navigator', { locks: manager });
  const take = await tab();
  expect(await Promise.all([take('boat'), take('lantern')])).toEqual([true, true]);
  expect([...manager.held.keys()]).toEqual(['seamwright work lantern']);
  expect(await take('boat')).toBe(true);
});

test('where the browser refuses locks, as it does with site data blocked, the tab is as good as the only one', async () => {
  const refused = () => Promise.reject(new DOMException('The request was denied.', 'SecurityError'));
  vi.stubGlobal('navigator', { locks: { request: refused } });
  expect(await (await tab())('boat')).toBe(true);
  vi.stubGlobal('navigator', {});
  expect(await (await tab())('boat')).toBe(true);
});
