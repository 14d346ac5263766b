import type { Plugin } from 'vite';

const ofFigure = /\/lessons\/[^/]+\/figures\/[^?]+\.svelte\?(?:.*&)?type=style/;

/**
 * Vite plugin: the styles of a lesson's own figures come with its page, which is built with them, and not with its script a second time. Astro
 * takes the styles of scripts for those of every page that one template makes: each lesson would load the figures' styles of all.
 */
export function stylesOnce(): Plugin {
  return {
    name: 'styles-once',
    enforce: 'pre',
    apply: 'build',
    applyToEnvironment: ({ name }) => name === 'client',
    load: { order: 'pre', handler: (id) => (ofFigure.test(id) ? { code: '', map: null } : undefined) },
  };
}
