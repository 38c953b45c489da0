import { test as plain } from '@playwright/test';
import { barriers } from './barriers.ts';
import { expect, test, watchPage } from './test.ts';

const OWN = 'http://own.example/';

plain('the watch over a page tells of an error that nobody caught', async ({ page }) => {
  const breaches = watchPage(page, OWN);
  await page.setContent('<script>setTimeout(() => { throw new Error("uncaught"); })</script>');
  await expect.poll(() => breaches).toEqual(['error on the page: uncaught']);
});

plain('the watch over a page tells of an error in the console', async ({ page }) => {
  const breaches = watchPage(page, OWN);
  await page.evaluate(() => console.error('on purpose'));
  await expect.poll(() => breaches).toEqual(['error in the console: on purpose']);
});

plain('the watch over a page tells of a request to another computer, not of its own', async ({ page }) => {
  const breaches = watchPage(page, OWN);
  // Both are answered here, so neither leaves the machine.
  await page.route('**', (route) => route.fulfill({ status: 200, body: '<!doctype html>' }));
  await page.goto(OWN);
  await page.evaluate(async () => {
    await fetch('/own');
    await fetch('data:text/plain,own');
    await fetch('http://other.example/', { mode: 'no-cors' });
  });
  expect(breaches).toEqual(['a request to another computer: http://other.example/']);
});

test('has to fail, and does: a test that found nothing else, on a page with a breach', async ({ page }) => {
  test.fail(); // Playwright lists it as ✘, and counts it as passed.
  await page.evaluate(() => console.error('on purpose'));
});

test('a page that breaks no promise passes', async ({ page }) => {
  await page.setContent('<p>Quiet</p>');
  await expect(page.getByText('Quiet')).toBeVisible();
});

test('what keeps someone out is found: a button without a name, letters that are too pale', async ({
  page,
}) => {
  await page.setContent(
    '<html lang="en"><title>Pier</title><main><h1>Pier</h1><button></button><p style="color: #bbb">Pale</p></main></html>',
  );
  expect(await barriers(page)).toEqual([
    expect.stringMatching(/^button-name: /),
    expect.stringMatching(/^color-contrast: .*Pale/),
  ]);
});
