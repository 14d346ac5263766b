import { globSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as core from '#core/index.ts';
import { everyFormula } from '#tests/support/every-formula.ts';

const root = resolve(import.meta.dirname, '../..');
const sources = globSync('core/*/**/*.ts', { cwd: root, exclude: ['**/*.test.ts'] }).sort();

/** What is meant for others has an example in its docstring; what the core only shares within itself has none. */
const withExample = /\/\*\*(?:(?!\*\/)[^])*@example(?:(?!\*\/)[^])*\*\/\s*export (?:function|class|const) (\w+)/g;

const documented = sources.flatMap((path) =>
  [...readFileSync(resolve(root, path), 'utf8').matchAll(withExample)].map(([, name]) => ({ path, name: name! })),
);

describe('the core’s public face', () => {
  it('has found what it is to hold', () => {
    expect(documented.length).toBeGreaterThan(150);
  });

  it.each(documented)('holds $name of $path', ({ name }) => {
    expect(core).toHaveProperty(name);
  });

  it('holds every formula with its function', async () => {
    const formulas = await everyFormula();
    expect(formulas.length).toBeGreaterThan(50);
    for (const { name, formula } of formulas) {
      expect(core).toHaveProperty(`${name}Formula`, formula);
      expect(core).toHaveProperty(name, formula.evaluate);
    }
  });
});
