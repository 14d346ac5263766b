import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { neverHydrating } from './nothing-hydrated.ts';

const installed = fileURLToPath(
  new URL('src/internal/client/dom/hydration.js', import.meta.resolve('svelte/package.json')),
);

test('the switch of the installed Svelte is set to never, and says so to whoever turns it', () => {
  const code = neverHydrating(readFileSync(installed, 'utf8'));
  expect(code).toContain('export const hydrating = false;');
  expect(code).not.toMatch(/^\s*hydrating = /m);
});

test('a Svelte without the switch is refused', () => {
  expect(() => neverHydrating('export const other = 1;')).toThrow('no longer says');
});
