import { afterAll, beforeEach, expect, test, vi } from 'vitest';

/** What the browser keeps, for all tabs. */
const kept = new Map<string, string>();
const storage = {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, text: string) => void kept.set(key, text),
};

/** Another tab: the same modules with a state of their own, over the same storage. */
async function tab() {
  vi.resetModules();
  const { choosePrinter, forgetPrinter, keepPrinter, usePrinters } = await import('./printers.ts');
  const { setting, useSettings } = await import('./settings.ts');
  return { choosePrinter, forgetPrinter, keepPrinter, usePrinters, setting, useSettings };
}

const PRINTER = { across: 0.97, down: 0.99, margins: { left: 0.25, right: 0.25, top: 0.25, bottom: 0.25 } };

beforeEach(() => {
  kept.clear();
  vi.stubGlobal('navigator', { language: 'en-US' });
  vi.stubGlobal('localStorage', storage);
});
afterAll(() => vi.unstubAllGlobals());

test('a printer that was measured in one tab stays when another one chooses among printers', async () => {
  const [a, b] = [await tab(), await tab()];
  a.keepPrinter({ name: 'Study', ...PRINTER });
  b.choosePrinter(null);
  expect((await tab()).usePrinters.getState()).toEqual({
    known: [{ name: 'Study', ...PRINTER }],
    chosen: null,
  });
  b.forgetPrinter('Study');
  a.keepPrinter({ name: 'Attic', ...PRINTER });
  expect((await tab()).usePrinters.getState().known.map(({ name }) => name)).toEqual(['Attic']);
});

test('what one tab sets stays when another one sets something else', async () => {
  const [a, b] = [await tab(), await tab()];
  a.setting({ paper: 'a4' });
  b.setting({ overlap: 0.25 });
  expect((await tab()).useSettings.getState()).toMatchObject({ paper: 'a4', overlap: 0.25 });
});

test('where the browser keeps nothing, or something else, all holds for this visit', async () => {
  vi.stubGlobal('localStorage', {
    getItem: () => {
      throw new DOMException('denied', 'SecurityError');
    },
    setItem: () => {
      throw new DOMException('denied', 'SecurityError');
    },
  });
  const alone = await tab();
  alone.keepPrinter({ name: 'Study', ...PRINTER });
  alone.choosePrinter(null);
  alone.setting({ paper: 'a4' });
  expect(alone.usePrinters.getState().known).toHaveLength(1);
  expect(alone.useSettings.getState().paper).toBe('a4');
  vi.stubGlobal('localStorage', { ...storage, getItem: () => '[1, "' });
  expect((await tab()).usePrinters.getState()).toEqual({ known: [], chosen: null });
});
