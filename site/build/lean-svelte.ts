import type { Plugin } from 'vite';

/**
 * Parts of Svelte that no lesson uses, taken out by their switches.
 *
 * - Taking over built markup: islands are mounted anew (`site/islands/enliven.ts`), so the switch for it is a constant.
 * - Deep state: state here is primitive or raw (lint says so), so what would wrap objects gives them back as they are.
 * - Boundaries that wait or catch: nothing here is asynchronous, and an error is a fault that shows in the console as it is.
 * - Asynchronous components and those of earlier editions: every component is written with runes (the compiler is told so).
 *
 * Each changes one known line and stops the build where a new edition of Svelte has another.
 */
const changes = [
  {
    file: /[\\/]client[\\/]dom[\\/]hydration\.js$/,
    from: 'export let hydrating = false;',
    to: 'export const hydrating = false;',
  },
  { file: /[\\/]client[\\/]dom[\\/]hydration\.js$/, from: '\thydrating = value;\n', to: '' },
  {
    file: /[\\/]client[\\/]proxy\.js$/,
    from: 'export function proxy(value) {',
    to: 'export const proxy = (value) => value;\nfunction deepState(value) {',
  },
  {
    file: /[\\/]client[\\/]render\.js$/,
    from: "import { boundary } from './dom/blocks/boundary.js';",
    to: "import { branch } from './reactivity/effects.js';\nconst boundary = (node, _, children) => branch(() => children(node));",
  },
  {
    file: /[\\/]client[\\/]reactivity[\\/]async\.js$/,
    from: 'export function flatten(blockers, sync, async, fn) {\n',
    to: 'export function flatten(_, sync, __, fn) {\n\tfn(sync.map(derived));\n}\n\nfunction flattenLater(blockers, sync, async, fn) {\n',
  },
  ...['async', 'legacy'].flatMap((mode) => [
    {
      file: /[\\/]flags[\\/]index\.js$/,
      from: `export let ${mode}_mode_flag = false;`,
      to: `export const ${mode}_mode_flag = false;`,
    },
    {
      file: /[\\/]flags[\\/]index\.js$/,
      from: `\t${mode}_mode_flag = true;`,
      to: `\tthrow new Error('No component here is written for the ${mode} mode.');`,
    },
  ]),
  { file: /[\\/]flags[\\/]index\.js$/, from: '\tasync_mode_flag = false;\n', to: '' },
] as const;

/** *code* of Svelte's module *id* without the parts that are never used; undefined where it has none. */
export function leanerModule(code: string, id: string): string | undefined {
  const own = changes.filter(({ file }) => file.test(id));
  if (own.length === 0) return undefined;
  return own.reduce((text, { from, to }) => {
    if (!text.includes(from)) throw new Error(`${id} has no “${from.trim()}”: look at this edition of Svelte anew.`);
    return text.replace(from, to);
  }, code);
}

/** Astro builds the entry of its own islands for every site; here it would bring code that no page runs. */
const islandEntry = '\0no-astro-islands';
const refusal = "throw new Error('Islands are written <Island is=…>, without a client: directive.');";

/** Vite plugin: Svelte in the browser without what no lesson uses. */
export function leanSvelte(): Plugin {
  return {
    name: 'lean-svelte',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    resolveId: (source) => (/^@astrojs\/svelte\/client/.test(source) ? islandEntry : undefined),
    load: (id) => (id === islandEntry ? `export default () => () => { ${refusal} };` : undefined),
    transform(code, id) {
      const leaner = /[\\/]svelte[\\/]src[\\/]internal[\\/]/.test(id) ? leanerModule(code, id) : undefined;
      return leaner === undefined ? undefined : { code: leaner, map: null };
    },
  };
}
