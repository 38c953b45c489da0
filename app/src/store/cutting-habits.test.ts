import { afterEach, expect, it, vi } from 'vitest';

/** The habits as they are read when the page is opened, from what was kept. */
async function opened(kept: unknown) {
  const texts = new Map([['seamwright cutting', JSON.stringify(kept)]]);
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => texts.set(key, text),
  });
  vi.resetModules();
  return { ...(await import('./cutting-habits.ts')), texts };
}

afterEach(() => vi.unstubAllGlobals());

it('sizes are rounded up to what the pattern’s ruler has, until the maker chooses for that ruler', async () => {
  const { useCuttingHabits, cutAs, texts } = await opened({ layers: 4 });
  // 1/4 in, and 5 mm: common practice.
  expect(useCuttingHabits.getState()).toMatchObject({ layers: 4, roundUpTo: { in: 0.25, cm: 5 / 25.4 } });
  cutAs({ roundUpTo: { ...useCuttingHabits.getState().roundUpTo, in: 0.125 } });
  const again = await opened(JSON.parse(texts.get('seamwright cutting')!));
  expect(again.useCuttingHabits.getState().roundUpTo).toEqual({ in: 0.125, cm: 5 / 25.4 });
});

it.each([null, 3, 'x', { roundUpTo: 0.25 }, { roundUpTo: null }, { roundUpTo: { in: '1/4' } }])(
  'what was kept in another form, %j, is left aside',
  async (kept) => {
    const { useCuttingHabits } = await opened(kept);
    expect(useCuttingHabits.getState()).toMatchObject({
      trim: expect.any(Boolean),
      roundUpTo: { in: 0.25, cm: 5 / 25.4 },
    });
  },
);
