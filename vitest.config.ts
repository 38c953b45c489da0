import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['packages/*/{src,test}/**/*.test.ts', 'app/src/**/*.test.ts', 'scripts/**/*.test.ts'],
    // Vitest itself leaves one core idle, which is half of a machine with two.
    maxWorkers: '100%',
    // Property tests over hundreds of drawings run for seconds; a hang still ends.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // maxrects-packer's main entry is no valid ES module for Node.
    server: { deps: { inline: ['maxrects-packer'] } },
  },
});
