import { defineConfig } from '@playwright/test';
import shared from '../playwright.config.ts';

/** The benches of what is on the screen, in the browser that the tests use. */
export default defineConfig({
  ...shared,
  testDir: '.',
  testMatch: '*.bench.ts',
  outputDir: '../../test-results/bench',
  reporter: [['line']],
  timeout: 10 * 60_000,
  use: { ...shared.use, trace: 'off', screenshot: 'off' },
  webServer: {
    command: 'node scripts/serve.mjs',
    cwd: '../..',
    wait: { stdout: /Serving on port (?<seamwright_port>\d+)/ },
  },
});
