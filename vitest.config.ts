import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';

const components = ['site/**/*.component.test.ts', 'lessons/**/*.component.test.ts'];

export default defineConfig({
  test: {
    projects: [
      {
        plugins: [svelte()],
        test: {
          name: 'node',
          environment: 'node',
          include: ['{core,site,lessons,tests}/**/*.test.ts'],
          exclude: [...components, 'tests/browser/**', 'node_modules/**'],
        },
      },
      {
        plugins: [svelte(), svelteTesting()],
        test: { name: 'components', environment: 'happy-dom', include: components },
      },
    ],
  },
});
