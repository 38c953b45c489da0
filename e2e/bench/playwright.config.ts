import { defineConfig } from '@playwright/test';
import shared from '../playwright.config.ts';

/** The benches of what is on the screen, in the browser that the tests use. */
export default defineConfig({
  ...shared,
  testDir: '.',
  testMatch: '*.bench.ts',
  outputDir: '../../test-results/bench',
  // One at a time: two would take each other's frames.
  workers: 1,
  fullyParallel: false,
  reporter: [['line']],
  timeout: 10 * 60_000,
  use: { ...shared.use, screenshot: 'off' },
  webServer: {
    command: 'node scripts/serve.mjs',
    cwd: '../..',
    wait: { stdout: /Serving on port (?<seamwright_port>\d+)/ },
  },
});
