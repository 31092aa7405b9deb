import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/end-to-end/**', 'node_modules/**'],
    setupFiles: ['tests/support/object-group-by.mjs'],
    testTimeout: 60_000,
  },
});
