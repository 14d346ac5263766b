import { globSync, readFileSync } from 'node:fs';

const sources = '{core,site,lessons}/**/*.{ts,svelte,astro,mdx,css,js}';
const tests = /\.test\.ts$/;

/** What can be typed on a keyboard, and the space that does not break a line. */
const typed = [...Array.from({ length: 0x7f - 0x20 }, (_, place) => String.fromCharCode(0x20 + place)), '\u00a0'];

/**
 * All characters that a page can show in a font of the workbook's own, formulas apart: what stands in any source and what can be typed. Whatever
 * else a reader brings is set in the system's face.
 */
export function shownCharacters(): string {
  const texts = globSync(sources)
    .filter((file) => !tests.test(file))
    .map((file) => readFileSync(file, 'utf8'));
  const characters = new Set(typed);
  for (const text of texts) for (const character of text) if (character > '~') characters.add(character);
  return [...characters].sort().join('');
}
