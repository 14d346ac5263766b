import { defineConfig } from 'vitest/config';
import { root } from '../support/run.ts';

/** Pictures take every other topic through thousands of steps: for those they would be hours of the same question asked again. */
const ofPictures = ['core/picture/**', 'tests/physics/{picture,merging}*', 'tests/reference/picture-*/**'];

/** The core's own tests and those that check it from outside: what a change of the core has to get past. */
export default defineConfig({
  root,
  test: {
    environment: 'node',
    include: ['core/**/*.test.ts', 'tests/{physics,reference}/**/*.test.ts'],
    exclude: process.env.MUTATED_TOPIC === 'picture' ? [] : ofPictures,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
