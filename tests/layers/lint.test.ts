import { ESLint } from 'eslint';
import { describe, expect, it } from 'vitest';
import { root } from '#tests/support/run.ts';

const eslint = new ESLint({ cwd: root });

async function rulesBroken(filePath: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath });
  return [...new Set((result?.messages ?? []).map(({ ruleId, message }) => ruleId ?? message))];
}

const core = 'core/gaussian/made-up.ts';
const lesson = 'lessons/extension/figures/MadeUp.svelte';
const spec = 'tests/browser/made-up.spec.ts';

describe('the linter', () => {
  it.each([
    ['the core importing the site', core, `import '#site/state/kit.ts';`, 'no-restricted-imports'],
    ['the core importing a package', core, `import 'katex';`, 'no-restricted-imports'],
    ['the core importing the platform', core, `import 'node:fs';`, 'no-restricted-imports'],
    ['an import without its extension', core, `import './conjugates';`, 'no-restricted-imports'],
    ['the core climbing out of its folder', core, `import '../../site/course.ts';`, 'no-restricted-imports'],
    [
      'the site importing a lesson',
      'site/made-up.ts',
      `import '#lessons/extension/stage.ts';`,
      'no-restricted-imports',
    ],
    ['the site importing a test', 'site/made-up.ts', `import '#tests/support/run.ts';`, 'no-restricted-imports'],
    [
      'a lesson importing another',
      lesson,
      `<script>import '../../diffraction/stage.ts';</script>`,
      'no-restricted-imports',
    ],
    ['a lesson importing a package', lesson, `<script lang="ts">import 'd3-scale';</script>`, 'no-restricted-imports'],
    [
      'a page importing a test',
      'site/pages/made-up.astro',
      `---\nimport '#tests/support/run.ts';\n---\n`,
      'no-restricted-imports',
    ],
    ['chance in the core', core, `export const x = Math.random();`, 'no-restricted-properties'],
    ['chance in a lesson', lesson, `<script>const x = Math.random(); x;</script>`, 'no-restricted-properties'],
    ['the clock in the core', core, `export const x = Date.now();`, 'no-restricted-globals'],
    ['the page in the core', core, `export const x = document.title;`, 'no-restricted-globals'],
    ['a request from a page', 'site/state/made-up.ts', `export const x = fetch('/x');`, 'no-restricted-globals'],
    ['a default export', core, `export default 1;`, 'no-restricted-syntax'],
    ['a barrel', core, `export * from './conjugates.ts';`, 'no-restricted-syntax'],
    ['a vague name', core, `export function calcDepth() {}`, 'no-restricted-syntax'],
    ['a vague name of an arrow', core, `export const getData = () => 1;`, 'no-restricted-syntax'],
    ['props handed on unnamed', lesson, `<rect {...{ x: 1 }} />`, 'no-restricted-syntax'],
    [
      'props taken as a rest',
      lesson,
      `<script>const { a, ...rest } = $props();</script>{a}{rest.b}`,
      'no-restricted-syntax',
    ],
    [
      'a field that is bound',
      lesson,
      `<script>let v = $state('');</script><input bind:value={v} />`,
      'no-restricted-syntax',
    ],
    ['an action', lesson, `<script>const act = () => {};</script><p use:act>x</p>`, 'no-restricted-syntax'],
    ['a class as a directive', lesson, `<p class:a={1}>x</p>`, 'no-restricted-syntax'],
    ['a style with a value', lesson, `<p style="left: {1}px">x</p>`, 'no-restricted-syntax'],
    [
      'a list kept at a value',
      lesson,
      `<select value="a"><option value="a">a</option></select>`,
      'no-restricted-syntax',
    ],
    ['a note left for later', core, `// TO${''}DO: round`, 'no-warning-comments'],
    [
      'an assertion on a page that nobody waits for',
      spec,
      `test('x', async ({ page }) => { expect(page).toHaveURL('/'); });`,
      'house/awaited',
    ],
    ['a walk that nobody waits for', spec, `async function go() { for (;;) open(); }`, 'house/awaited'],
    ['a click that a test forgets', spec, `test('x', ({ page }) => { page.click('a'); });`, 'house/awaited'],
    ['a skipped test', 'core/gaussian/made-up.test.ts', `it.skip('holds', () => {});`, 'no-restricted-syntax'],
  ])('reports %s', async (_, file, code, rule) => {
    expect(await rulesBroken(file, code)).toContain(rule);
  });

  it.each([
    ['the core importing itself', core, `import '#core/quantity/errors.ts';\nimport './conjugates.ts';`],
    [
      'a test beside its source using the tests’ support',
      'core/gaussian/made-up.test.ts',
      `import '#tests/support/close-to.ts';`,
    ],
    [
      'a figure using its lesson’s bench',
      lesson,
      `<script>import '../bench.svelte.ts'; import { onMount } from 'svelte'; onMount;</script>`,
    ],
    [
      'assertions on values, what is waited for, and what a page does in itself',
      spec,
      `test('x', async ({ page }) => {
         await page.evaluate(() => { scrollTo(0, 0); });
         expect(1).toBe(1);
         page.on('request', () => undefined);
       });`,
    ],
    ['the core’s one index', 'core/index.ts', `export * from './gaussian/conjugates.ts';`],
  ])('accepts %s', async (_, file, code) => {
    const broken = await rulesBroken(file, code);
    expect(broken.filter((rule) => /^(no-restricted|house)/.test(rule))).toEqual([]);
  });
});
