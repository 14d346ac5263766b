import { defineConfig } from 'vitest/config';
import { root } from '../support/run.ts';

/** The core's own tests and those that check it from outside: what a change of the core has to get past. */
export default defineConfig({
  root,
  test: {
    environment: 'node',
    include: ['core/**/*.test.ts', 'tests/{physics,reference}/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
