import { globSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { Plugin } from 'vite';

const root = resolve(import.meta.dirname, '../..');
const core = `${root}/core/`;

/** What all lessons' pages are made of. */
const ofAllLessons = 'site/{controls,figures,islands,layouts,lesson,print,stage,state,terms}/**/*.{ts,svelte,astro}';

const imported = /^\s*(?:import|export)\s+(?!type\b)(?:[\w*{][^'";]*?\sfrom\s+)?'([#.][^']+)'/gm;

/** The project's own files that *text*, in *folder*, imports by a statement, types left out. */
export function importsIn(text: string, folder: string): readonly string[] {
  return [...text.matchAll(imported)].map(([, name = '']) =>
    name.startsWith('#') ? resolve(root, name.slice(1)) : resolve(folder, name),
  );
}

/** All files of the core that what lessons share can reach, by way of one another; and those that share it. */
export function coreOfAllLessons(): ReadonlySet<string> {
  const files = globSync(ofAllLessons, { cwd: root, exclude: ['**/*.test.ts'] });
  const reached = new Set(files.map((file) => resolve(root, file)));
  for (const file of reached) {
    for (const next of importsIn(readFileSync(file, 'utf8'), dirname(file)))
      if (next.startsWith(core)) reached.add(next);
  }
  return reached;
}

/** What of the site holds numbers and functions alone, and few lessons have: as small as a formula. */
const alsoOwn =
  /\/site\/(?:state\/(?:crate-\w+|edges|lens-in-use|lens-marks|metered|rung-giving|stands-out)|controls\/styled|figures\/(?:plot\/along-line|side-view\/lens-on-camera))\.ts$/;

/** What makes a kind of problem of its plan is the same for all lessons, though none of their shared parts asks for it. */
const practice = `${core}practice/`;

const ownOf = /[?&]in=([a-z0-9-]+)/;
const pageOf = /\/lessons\/([a-z0-9-]+)\/(?:figures\/|bench\.svelte\.ts)/;

/**
 * The name of the copy of *file* that a lesson has for itself where *importer* asks for it; undefined where it is shared. With the page's problems begins a
 * copy, too: what other pages take of those is theirs.
 */
export function ownCopy(importer: string, file: string, shared: ReadonlySet<string>): string | undefined {
  const lesson = (ownOf.exec(importer) ?? pageOf.exec(importer))?.[1];
  const isOwn =
    (file.startsWith(core) && !file.startsWith(practice) && !shared.has(file)) ||
    alsoOwn.test(file) ||
    file === `${root}/lessons/${lesson}/problems.ts`;
  return lesson !== undefined && isOwn && file.endsWith('.ts') ? `${file}?in=${lesson}` : undefined;
}

/**
 * Vite plugin: a lesson's page has its own copies of what it takes of the core and no part shared by all lessons does, formulas for the most
 * part. As a file that pages share each would cost more by itself, in lists of imports and in the head of its answer, than it holds.
 *
 * A copy is as good as what it is of: the core keeps nothing. Pages beside the lessons have problems and formulas of many lessons, and share
 * theirs.
 */
export function ownCopies(): Plugin {
  let shared: ReadonlySet<string>;
  return {
    name: 'own-copies',
    enforce: 'pre',
    apply: 'build',
    applyToEnvironment: ({ name }) => name === 'client',
    // A lesson's problems may take from the page's own script what both need.
    options: (options) => ({ ...options, preserveEntrySignatures: 'allow-extension' }),
    buildStart() {
      shared = coreOfAllLessons();
    },
    async resolveId(source, importer) {
      if (importer === undefined || !/^[#.]/.test(source) || !(ownOf.test(importer) || pageOf.test(importer)))
        return undefined;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found ? ownCopy(importer, found.id, shared) : undefined;
    },
  };
}
