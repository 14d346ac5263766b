import { globSync, readFileSync } from 'node:fs';
import katex from 'katex';
import { glossary } from '#core/quantity/glossary.ts';
import { everyEquation } from './equations.ts';

const sources = '{core,site,lessons}/**/*.{ts,svelte,astro,mdx,css,js}';
const tests = /\.test\.ts$/;
const command = /\\(?:[a-zA-Z]+|[,;:!|{}%])/g;
const hidden = /<span class="katex-mathml">.*?<\/math><\/span>|<[^>]+>/gs;

/** What can be typed on a keyboard, and the space that does not break a line. */
const typed = [...Array.from({ length: 0x7f - 0x20 }, (_, place) => String.fromCharCode(0x20 + place)), '\u00a0'];

/**
 * All characters that a page can show in a font of the workbook's own: what stands in any source, what can be typed, and what the commands
 * of TeX in the sources are set as. Whatever else a reader brings is set in the system's face.
 */
export function shownCharacters(): string {
  const texts = globSync(sources)
    .filter((file) => !tests.test(file))
    .map((file) => readFileSync(file, 'utf8'));
  const characters = new Set(typed);
  // A bar is set as another character than the one that is typed.
  const commands = new Set(['|']);
  for (const text of texts) {
    for (const character of text) if (character > '~') characters.add(character);
    for (const [name] of text.matchAll(command)) commands.add(name);
  }
  for (const name of commands) for (const character of setAs(name)) characters.add(character);
  return [...characters].sort().join('');
}

/** What a command is set as, bare or with one argument or two; nothing where it is none of TeX's. */
function setAs(name: string): string {
  for (const tex of [name, `${name}{x}`, `${name}{x}{y}`, `${name}(x\\right)`]) {
    try {
      return katex
        .renderToString(tex, { displayMode: true, strict: 'ignore' })
        .replace(hidden, '')
        .replace(/&(?:#x([0-9a-f]+)|amp|lt|gt);/gi, (entity, code?: string) =>
          code === undefined ? entity : String.fromCodePoint(parseInt(code, 16)),
        );
    } catch {
      // Not written so; the next way of writing it may be.
    }
  }
  return '';
}

/** All that formulas set in their italic: the letters of quantities, and what formulas have besides. */
export async function italicLetters(): Promise<string> {
  const letters = Object.values(glossary).map(({ tex }) => katex.renderToString(tex));
  const equations = Object.values(await everyEquation()).flat();
  return italicsIn([...letters, ...equations].join(''));
}

/** What the markup *html* sets in the italic of formulas, each character once. */
export function italicsIn(html: string): string {
  const texts = [...html.matchAll(/class=\\?"[a-z ]*\bmathnormal\b[^>]*>([^<]*)</g)].map(([, text = '']) => text);
  return [...new Set(texts.join(''))].sort().join('');
}
