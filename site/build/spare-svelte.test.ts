import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { withoutSpares } from './spare-svelte.ts';

const installed = (name: string) =>
  readFileSync(
    fileURLToPath(new URL(`src/internal/client/${name}`, import.meta.resolve('svelte/package.json'))),
    'utf8',
  );

test('the switch of the installed Svelte is set to never, and says so to whoever turns it', () => {
  const code = withoutSpares(installed('dom/hydration.js'), 'dom/hydration.js');
  expect(code).toContain('export const hydrating = false;');
  expect(code).not.toMatch(/^\s*hydrating = /m);
});

test.each([
  ['proxy.js', 'write $state.raw'],
  ['reactivity/async.js', 'waits for a promise'],
  ['render.js', 'branch(() => children(node))'],
])('of the installed Svelte’s %s there is left out what no page needs', (name, put) => {
  expect(installed(name)).not.toContain(put);
  expect(withoutSpares(installed(name), name)).toContain(put);
});

test('a Svelte that says something else is refused', () => {
  expect(() => withoutSpares('export const other = 1;', 'proxy.js')).toThrow('no longer says');
});
