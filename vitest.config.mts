import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['{grammar,server,client,tests}/**/*.test.ts'],
    exclude: ['tests/editors/**', 'node_modules/**'],
    testTimeout: 120_000,
  },
});
