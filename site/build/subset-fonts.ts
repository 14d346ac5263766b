import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join, relative, sep } from 'node:path';
import { convert } from 'fontverter';
import subsetFont from 'subset-font';
import type { Plugin } from 'vite';
import { everyFormulaMarkup, formulaParts } from './formula-markup.ts';
import { withPlainNames } from './plain-names.ts';
import { shownCharacters } from './shown-characters.ts';

const font = /\.woff2(?:\?url)?$/;
const inStyles = /url\((["']?)([^"')]+\.woff2)\1\)/g;
/** Of this face the styles take one figure. */
const zeroOnly = /work-sans/;
/** A face of formulas, by its name. */
const ofFormulas = /KaTeX_([\w-]+)\.woff2$/;
/** Weights that the styles use. */
const weights = { wght: { min: 400, max: 700 } };
/** What pairs of letters keep between them, and figures of one width; nothing here is set with loose accents. */
const keepFeatures = ['kern', 'liga', 'tnum'];
/** How programs that list fonts name their weights. */
const forMenus = ['STAT'];
/** Spaces between two characters: one has none. */
const forPairs = ['GDEF', 'GPOS'];

/** `Main` for KaTeX_Main-Regular.woff2: enough to tell the fonts of a printed page apart. */
const shortName = (file: string) => basename(file).replace(/^KaTeX_|-.*$/g, '');

const resolveFrom = createRequire(import.meta.url).resolve;

/**
 * Vite plugin: fonts hold only the characters that the site can show, so that a first visit is half as heavy. The parts are made anew
 * for each build and lie beside the tools' own caches.
 */
export function subsetFonts(folder = 'node_modules/.cache/ring-and-ruler-fonts'): Plugin {
  let root = process.cwd();
  let characters = '';
  const made = new Map<string, Promise<string>>();

  async function charactersOf(file: string): Promise<string> {
    if (zeroOnly.test(file)) return '0';
    const face = ofFormulas.exec(file)?.[1];
    if (face !== undefined) return formulaParts(await everyFormulaMarkup()).faces.get(face) ?? '';
    return (characters ||= shownCharacters());
  }

  async function make(file: string): Promise<string> {
    const target = join(root, folder, basename(file));
    const variationAxes = basename(file).includes('-wght-') ? weights : {};
    // Screens of today place points finely: no browser that shows these pages needs to be told how to round them.
    const part = await subsetFont(readFileSync(file), await charactersOf(file), {
      targetFormat: 'truetype',
      variationAxes,
      keepFeatures,
      noHinting: true,
      dropTables: zeroOnly.test(file) ? [...forMenus, ...forPairs] : forMenus,
    });
    mkdirSync(dirname(target), { recursive: true });
    // Put in place whole: another build may be reading its own.
    const beside = `${target}.${process.pid}`;
    writeFileSync(beside, await convert(withPlainNames(part, shortName(file)), 'woff2'));
    renameSync(beside, target);
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
