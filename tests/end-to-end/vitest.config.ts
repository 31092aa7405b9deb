/** The end-to-end tests: real editor, real browser, the packaged extension; one file after the other. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/end-to-end/**/*.test.ts'],
    globalSetup: ['tests/end-to-end/setup.ts'],
    fileParallelism: false,
    testTimeout: 90_000,
    hookTimeout: 120_000,
    // A browser and an editor on a busy machine take their time.
    expect: { poll: { timeout: 20_000 } },
  },
});
