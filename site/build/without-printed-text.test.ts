import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withoutPrintedText } from './without-printed-text.ts';

const formulas = globSync('core/*/*.formula.ts');
const problems = globSync('lessons/*/problems.ts');

test('there are formulas and problems to look at', () => {
  expect(formulas.length).toBeGreaterThan(10);
  expect(problems.length).toBeGreaterThan(0);
});

test.each(formulas)('%s loses its TeX, its sentence and its source, and nothing else', (file) => {
  const whole = readFileSync(file, 'utf8');
  const bare = withoutPrintedText(whole, file)!;
  expect(bare).not.toMatch(/^ {2}(?:tex|says|source|sample|checkedBy):/m);
  const code = (text: string) => text.split(/^export const \w+Formula = \{$/m)[0];
  expect(code(bare)).toBe(code(whole));
  expect(bare).toContain('evaluate:');
});

test.each(problems)('%s loses the words of its problems', (file) => {
  const bare = withoutPrintedText(readFileSync(file, 'utf8'), `/${file}`)!;
  expect(bare).not.toMatch(/\b(?:question|hint|note|because):\s*(?:'[^']|"[^"]|`)/);
});

test('other files stay as they are', () => {
  expect(withoutPrintedText("source: 'kept',", 'core/depth/defocus-blur.ts')).toBeUndefined();
});
