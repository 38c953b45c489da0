import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['packages/*/{src,test}/**/*.test.ts', 'app/src/**/*.test.ts', 'scripts/**/*.test.ts'],
    // Property tests over hundreds of drawings run for seconds; a hang still ends.
    testTimeout: 300_000,
    // maxrects-packer's main entry is no valid ES module for Node.
    server: { deps: { inline: ['maxrects-packer'] } },
  },
});
