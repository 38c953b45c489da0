import type { Page } from '@playwright/test';
import { expect } from './test.ts';

/** What a page has told screen readers politely, in this order, since it was loaded. */
declare global {
  interface Window {
    spoken: string[];
  }
}

/**
 * Writes down what screen readers are told, from the next load of the page on. They read out each sentence in turn; on the
 * page it stands only until the next one comes, and a test that looks there may look too late.
 */
export async function listen(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.spoken = [];
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        const element = target instanceof Element ? target : target.parentElement;
        const text = element?.closest('[role=status]')?.textContent;
        if (text) window.spoken.push(text);
      }
    }).observe(document, { subtree: true, childList: true, characterData: true });
  });
}

/** Waits until the page, which is listened to, has said a sentence that reads like this. */
export async function toHear(page: Page, sentence: RegExp): Promise<void> {
  await expect.poll(() => page.evaluate(() => window.spoken)).toContainEqual(expect.stringMatching(sentence));
}
