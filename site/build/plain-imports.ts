import type { Plugin } from 'vite';

/**
 * Vite plugin: code that is fetched later is fetched by a plain import.
 *
 * Vite would first ask for its stylesheets and for all that it leans on, by a helper with lists of files that every page carries. Here the
 * page has those styles, having been built with what they are for, and what that code leans on runs already.
 */
export function plainImports(): Plugin {
  return {
    name: 'plain-imports',
    enforce: 'pre',
    load: {
      filter: { id: /^\0vite\/preload-helper/ },
      handler: () => 'export const __vitePreload = (load) => load();',
    },
    // What would become the lists.
    renderChunk: (code) =>
      code.includes('__VITE_PRELOAD__') ? { code: code.replaceAll('__VITE_PRELOAD__', '[]'), map: null } : undefined,
  };
}
