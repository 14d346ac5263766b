import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

const own = fileURLToPath(new URL('./mount-island.ts', import.meta.url));

/** Vite plugin: islands are mounted by `mount-island.ts` in place of the integration's own entry. */
export function mountedIslands(): Plugin {
  return {
    name: 'mounted-islands',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    resolveId: (source) => (/^@astrojs\/svelte\/client/.test(source) ? own : undefined),
  };
}
