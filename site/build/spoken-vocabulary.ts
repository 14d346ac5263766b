import { globSync, readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const row = /^ {2}(?:'([a-z-]+)'|([a-z]+)): row\(.*\),\n/gm;

/** The vocabulary's source with only the rows of quantities that *spoken*, the text of all that uses it, names. */
export function spokenVocabulary(code: string, spoken: string): string {
  const names = new Set(spoken.match(/[a-z][a-z-]*[a-z]/g));
  return code.replace(row, (line, quoted: string | undefined, bare: string | undefined) =>
    names.has((quoted ?? bare)!) ? line : '',
  );
}

/** What lessons say, and what the core files say that they import: every quantity a browser may have to print is among it. */
export function spokenInLessons(): string {
  const lessons = globSync('lessons/*/**/*.{ts,svelte,mdx}').map((file) => readFileSync(file, 'utf8'));
  const imported = new Set(
    lessons.flatMap((text) => [...text.matchAll(/'#(core\/[^']+\.ts)'/g)].map(([, file]) => file!)),
  );
  const core = [...imported]
    .filter((file) => !file.startsWith('core/quantity/'))
    .map((file) => readFileSync(file, 'utf8'));
  return [...lessons, ...core].join('\n');
}

/** Vite plugin: quantities that no lesson speaks of yet do not travel to readers. */
export function keepSpokenVocabulary(): Plugin {
  return {
    name: 'keep-spoken-vocabulary',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    transform: (code, id) =>
      /[\\/]core[\\/]quantity[\\/]vocabulary\.ts(?:\?|$)/.test(id)
        ? { code: spokenVocabulary(code, spokenInLessons()), map: null }
        : undefined,
  };
}
