import { expect, it } from 'vitest';
import * as core from '#core/index.ts';
import { everyFormula } from '#tests/support/every-formula.ts';

const formulas = await everyFormula();

it('there are formulas to look for', () => {
  expect(formulas.length).toBeGreaterThan(50);
});

it.each(formulas)('core/index.ts gives out $name, of $path', ({ name, formula }) => {
  const face = core as Record<string, unknown>;
  expect(face[name]).toBe(formula.evaluate);
  expect(face[`${name}Formula`]).toBe(formula);
});
