import { defineConfig } from '@playwright/test';
import { chromiumSwitches, presentChromium, thisMachine } from '../scripts/lib/find.mjs';

const chromium = presentChromium(thisMachine);
if (chromium.path === null) throw new Error(`${chromium.said}. “npm test” finds or installs one.`);

export default defineConfig({
  testDir: '.',
  outputDir: '../test-results/e2e',
  // Two at a time: a browser under test waits a good part of its time, and does not fill the two cores of a small machine.
  workers: 2,
  fullyParallel: true,
  // A test that passes the second time has failed.
  retries: 0,
  forbidOnly: Boolean(process.env.CI),
  // A slow or busy computer is no failure, and speed is measured by benches: these only end what hangs.
  timeout: 120_000,
  expect: { timeout: 30_000 },
  globalTimeout: 45 * 60_000,
  reporter: [['list'], ['json', { outputFile: '../test-results/e2e.json' }]],
  use: {
    browserName: 'chromium',
    // The server below is given a port that is free, and Playwright puts what it says of it in the environment.
    baseURL: `http://127.0.0.1:${process.env.SEAMWRIGHT_PORT}/`,
    viewport: { width: 1280, height: 800 },
    locale: 'en-US',
    timezoneId: 'UTC',
    screenshot: 'only-on-failure',
    // A trace takes a third of the time, and is thrown away where all is well. “npm run e2e -- WHAT --trace on” has one.
    trace: 'off',
    launchOptions: { executablePath: chromium.path, args: chromiumSwitches(thisMachine) },
  },
  webServer: {
    command: 'node scripts/serve.mjs',
    cwd: '..',
    wait: { stdout: /Serving on port (?<seamwright_port>\d+)/ },
  },
});
