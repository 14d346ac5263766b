import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { quantityOf, type BaseUnit, type QuantityName } from '#core/quantity/vocabulary.ts';
import { everyFormula, type AnyFormula } from '#tests/support/every-formula.ts';
import { quantities } from '#tests/support/sample.ts';

/** How a number in each unit changes in a world where all lengths are twice as large and clocks run as before. */
const whenLengthsDouble: Record<BaseUnit, number> = {
  mm: 2,
  m: 2,
  '1/mm': 0.5,
  dpt: 0.5,
  'mm/s': 2,
  '': 1,
  s: 1,
  lx: 1,
  'cd/m²': 1,
  rad: 1,
  'rad/s': 1,
  stops: 1,
  px: 1,
};

/** Formulas that contain a fixed length, each with the reason. */
const fixedLength: Record<string, string> = {
  cropFactor: 'compares with a frame of 36 × 24 mm',
  electrons: 'counts the photons on a square millimetre',
  isoAtFullWell: 'counts the photons on a square millimetre',
};

function answerOf(formula: AnyFormula, values: Record<string, number>): number | undefined {
  try {
    return evaluateFormula(formula, values);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

const factorOf = (id: QuantityName) => whenLengthsDouble[quantityOf(id).base];

const files = await everyFormula();

/** Doubling is exact in binary, so the two sides must be the same number: a forgotten power or a stray length shows at once. */
describe.each(files.filter(({ name }) => !(name in fixedLength)))('$path', ({ formula }) => {
  it('gives the same picture twice as large when every length is doubled', () => {
    let compared = 0;
    fc.assert(
      fc.property(quantities(formula.from, formula.sample), (values) => {
        const doubled = Object.fromEntries(
          Object.entries(values).map(([id, value]) => [id, value * factorOf(id as QuantityName)]),
        );
        const answer = answerOf(formula, values);
        if (answer === undefined) return;
        compared++;
        expect(answerOf(formula, doubled)).toBe(answer * factorOf(formula.gives));
      }),
      { seed: 9, numRuns: 100 },
    );
    expect(compared).toBeGreaterThan(50);
  });
});

describe('formulas with a fixed length', () => {
  it.each(Object.keys(fixedLength))('%s exists', (name) => {
    expect(files.map((file) => file.name)).toContain(name);
  });
});
