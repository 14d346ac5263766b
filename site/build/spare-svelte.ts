import type { Plugin } from 'vite';

type Change = readonly [from: string, to: string];

/** By its file in the installed Svelte: what these pages do without, and what stands in its place. */
const changes: Readonly<Record<string, readonly Change[]>> = {
  // Nothing takes over built markup. Svelte means that code to fall away, but its switch is a variable, which the bundler keeps.
  'dom/hydration.js': [
    ['export let hydrating = false;', 'export const hydrating = false;'],
    [
      '\thydrating = value;',
      "\tif (value) throw new Error('Islands are drawn anew: nothing takes over built markup.');",
    ],
  ],
  // State is replaced as a whole: no object is watched property by property.
  'proxy.js': [
    [
      '\t/** @type {Map<any, Source<any>>} */\n\tvar sources = new Map();',
      "\tif (!DEV) throw new Error('State is replaced as a whole: write $state.raw.');\n\n\t/** @type {Map<any, Source<any>>} */\n\tvar sources = new Map();",
    ],
  ],
  // No component waits for a promise in its markup.
  'reactivity/async.js': [
    [
      '\tif (async.length === 0 && pending.length === 0) {\n\t\tfn(deriveds);\n\t\treturn;\n\t}\n',
      "\tif (!DEV) {\n\t\tif (async.length > 0 || pending.length > 0) throw new Error('No component waits for a promise.');\n\t\tfn(deriveds);\n\t\treturn;\n\t}\n",
    ],
  ],
  // Nor does any catch what its parts throw.
  'render.js': [
    [
      "import { boundary } from './dom/blocks/boundary.js';",
      "import { branch } from './reactivity/effects.js';\nconst boundary = (node, _, children) => branch(() => children(node));",
    ],
  ],
};

const file = /\/svelte\/src\/internal\/client\/(dom\/hydration\.js|proxy\.js|reactivity\/async\.js|render\.js)(?:\?|$)/;

/** Svelte's *code* of the file *name* without what no page here needs. Throws where that is not found as it was. */
export function withoutSpares(code: string, name: string): string {
  return changes[name]!.reduce((now, [from, to]) => {
    if (!now.includes(from)) throw new Error(`Svelte's ${name} no longer says "${from.trim()}".`);
    return now.replace(from, () => to);
  }, code);
}

/**
 * Vite plugin: leaves out of the browser's code what Svelte has for pages of another kind, 3 KB of every page. Islands are drawn anew in one task
 * (`site/islands/enliven.ts`), state is replaced as a whole, and nothing is awaited or caught in markup; what does so all the same is told by
 * an error in the built page.
 */
export function spareSvelte(): Plugin {
  return {
    name: 'spare-svelte',
    enforce: 'pre',
    apply: 'build',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      const name = file.exec(id)?.[1];
      return name === undefined ? undefined : { code: withoutSpares(code, name), map: null };
    },
  };
}
