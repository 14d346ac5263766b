import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join, relative, sep } from 'node:path';
import subsetFont from 'subset-font';
import type { Plugin } from 'vite';
import { shownCharacters } from './shown-characters.ts';

const font = /\.woff2(?:\?url)?$/;
const inStyles = /url\((["']?)([^"')]+\.woff2)\1\)/g;
/** Of this face the styles take one figure. */
const zeroOnly = /work-sans/;
/** Weights that the styles use. */
const weights = { wght: { min: 400, max: 700 } };

const resolveFrom = createRequire(import.meta.url).resolve;

/**
 * Vite plugin: fonts hold only the characters that the site can show, so that a first visit is half as heavy. The parts are made anew
 * for each build and lie beside the tools' own caches.
 */
export function subsetFonts(folder = 'node_modules/.cache/ring-and-ruler-fonts'): Plugin {
  let root = process.cwd();
  let characters = '';
  const made = new Map<string, Promise<string>>();

  async function make(file: string): Promise<string> {
    characters ||= shownCharacters();
    const target = join(root, folder, basename(file));
    const variationAxes = basename(file).includes('-wght-') ? weights : {};
    const part = await subsetFont(readFileSync(file), zeroOnly.test(file) ? '0' : characters, {
      targetFormat: 'woff2',
      variationAxes,
    });
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, part);
    return target;
  }

  /** The part of the font *file*, an absolute path. */
  function partOf(file: string): Promise<string> {
    const known = made.get(file) ?? make(file);
    made.set(file, known);
    return known;
  }

  return {
    name: 'subset-fonts',
    enforce: 'pre',
    apply: 'build',
    configResolved: (config) => {
      root = config.root;
    },
    async resolveId(source) {
      if (!font.test(source) || source.startsWith('.') || source.startsWith('/')) return undefined;
      const [file = '', query] = source.split('?');
      return `${await partOf(resolveFrom(file))}${query === undefined ? '' : `?${query}`}`;
    },
    async transform(code, id) {
      const [sheet = ''] = id.split('?');
      if (!sheet.endsWith('.css')) return undefined;
      const parts = new Map<string, string>();
      for (const [, , url = ''] of code.matchAll(inStyles)) {
        const file = url.startsWith('@') ? resolveFrom(url) : join(dirname(sheet), url);
        parts.set(
          url,
          relative(dirname(sheet), await partOf(file))
            .split(sep)
            .join('/'),
        );
      }
      if (parts.size === 0) return undefined;
      return { code: code.replace(inStyles, (_, _quote, url: string) => `url('${parts.get(url)}')`), map: null };
    },
  };
}
