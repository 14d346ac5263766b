import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';

/** Tests of components, and of runes, which only run as in a page where there is one. */
const inPage = ['{site,lessons,tests}/**/*.{component,svelte}.test.ts'];

// Components as a page runs them. What svelte does besides for who develops (where each element stands in its source, found out by the stack of
// an error) takes as long as a third of the rest; `npm run dev` has it.
process.env.NODE_ENV = 'production';

export default defineConfig({
  test: {
    // No test is a race: a busy machine must not fail one.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    allowOnly: false,
    // Files share what they import, which is read and compiled once: no module of ours keeps what a test did, but for the benches, which
    // tests put back.
    isolate: false,
    projects: [
      {
        extends: true,
        plugins: [svelte({ configFile: false })],
        test: {
          name: 'node',
          environment: 'node',
          include: ['{core,site,lessons,tests}/**/*.test.ts'],
          exclude: [...inPage, 'tests/browser/**'],
        },
      },
      {
        extends: true,
        plugins: [svelte({ configFile: false }), svelteTesting()],
        test: { name: 'page', environment: 'happy-dom', include: inPage },
      },
    ],
  },
});
