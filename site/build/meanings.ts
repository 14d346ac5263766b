import type { Plugin } from 'vite';
import { glossary } from '#core/quantity/glossary.ts';
import { terms } from '#core/quantity/terms.ts';

const name = 'virtual:meanings';

/** Vite plugin: what every term and every letter means, as a file of its own that is fetched when one is asked. */
export function meanings(): Plugin {
  return {
    name: 'meanings',
    resolveId: (source) => (source === name ? `\0${name}` : undefined),
    load(id) {
      if (id !== `\0${name}`) return undefined;
      const ofTerms = Object.fromEntries(terms.map((term) => [term.id, term.plain]));
      const ofLetters = Object.fromEntries(Object.entries(glossary).map(([letter, { meaning }]) => [letter, meaning]));
      return `export const ofTerms = ${JSON.stringify(ofTerms)}; export const ofLetters = ${JSON.stringify(ofLetters)};`;
    },
  };
}
