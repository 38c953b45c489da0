import { expect, type Locator, type Page } from '@playwright/test';
import { goTo, open, openBlock } from './app.ts';

/** The Paper station's panel. */
export const printing = (page: Page): Locator => page.getByRole('region', { name: 'Printing' });

/** Takes a block of the demo to the Paper station, and waits for its sheets. */
export async function takeToPaper(page: Page, block: string): Promise<void> {
  await open(page, '?demo');
  await openBlock(page, block);
  await goTo(page, 'Paper');
  await expect(printing(page).getByRole('button', { name: 'Save PDF' })).toBeEnabled();
}

/** Milliseconds that the program waits between two files that are saved one after the other. */
const BETWEEN_FILES = 250;

/** Holds what is saved in several files after each of them, however slow the test is; the function that is returned lets it go on. */
export async function holdBetweenFiles(page: Page): Promise<() => Promise<void>> {
  await page.addInitScript((between) => {
    const held: (() => void)[] = [];
    const wait = window.setTimeout;
    const hold = (run: () => void, ms?: number, ...rest: unknown[]) =>
      ms === between ? held.push(run) : wait(run, ms, ...rest);
    const goOn = () => {
      for (const run of held.splice(0)) run();
    };
    Object.assign(window, { setTimeout: hold, held, goOn });
  }, BETWEEN_FILES);
  return async () => {
    await page.waitForFunction('held.length > 0');
    await page.evaluate('goOn()');
  };
}
