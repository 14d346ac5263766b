import type { Plugin } from 'vite';

const file = /\/svelte\/src\/internal\/client\/dom\/hydration\.js(?:\?|$)/;
const changes = [
  ['export let hydrating = false;', 'export const hydrating = false;'],
  ['\thydrating = value;', "\tif (value) throw new Error('Islands are drawn anew: nothing takes over built markup.');"],
] as const;

/** Svelte's *code* for taking over built markup, with its switch set to never. Throws where the switch is not found. */
export function neverHydrating(code: string): string {
  return changes.reduce((now, [from, to]) => {
    if (!now.includes(from)) throw new Error(`Svelte's hydration.js no longer says "${from.trim()}".`);
    return now.replace(from, to);
  }, code);
}

/**
 * Vite plugin: leaves out of the browser's code what takes over built markup. Islands are drawn anew in one task (`site/islands/enliven.ts`);
 * Svelte means that code to fall away then, but its switch is a variable that the bundler keeps.
 */
export function nothingHydrated(): Plugin {
  return {
    name: 'nothing-hydrated',
    enforce: 'pre',
    apply: 'build',
    applyToEnvironment: ({ name }) => name === 'client',
    transform: (code, id) => (file.test(id) ? { code: neverHydrating(code), map: null } : undefined),
  };
}
