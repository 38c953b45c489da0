import { defineConfig } from 'vitest/config';

/** Checks that take minutes: run by hand, when what they check was changed (`npm run check:heavy`). */
export default defineConfig({
  test: {
    include: ['packages/*/{src,test}/**/*.heavy.ts'],
    testTimeout: 30 * 60_000,
  },
});
