import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { everyFormula, type AnyFormula } from '#tests/support/every-formula.ts';
import { quantities } from '#tests/support/sample.ts';

/** Where infinity is an answer: everything behind the sharp plane is sharp, or in front of it with the pupil behind the subject. */
const mayBeInfinite = new Set<QuantityName>(['near-limit', 'far-limit', 'depth-of-field', 'lighting-ratio']);

/** Nothing that anybody measures is outside 1e-50 to 1e50; beyond 1e77 a product of four such numbers would overflow. */
const strange = fc.oneof(
  fc.constantFrom(0, -0, -1, NaN, Infinity, -Infinity, 1e50, 1e-50, -1e50),
  fc.double({ min: -1e50, max: 1e50, noNaN: true }).filter((value) => value === 0 || Math.abs(value) > 1e-50),
);

/** Limits of what is sharp that may lie at infinity: what leans on them is then a number still. */
const mayBeGivenInfinite: Readonly<Partial<Record<QuantityName, readonly QuantityName[]>>> = {
  'keeper-share': ['near-limit', 'far-limit'],
  'sharp.subject-width': ['depth-of-field'],
};

/** Evaluates; a refusal must be an `OutOfRange` with what the page needs to explain it, an answer must be a number. */
function answersOrRefuses(formula: AnyFormula, values: Record<string, number>): 'answer' | 'refusal' {
  try {
    const answer = evaluateFormula(formula, values);
    const acceptable = Number.isFinite(answer) || (answer === Infinity && mayBeInfinite.has(formula.gives));
    expect(acceptable, `${formula.gives} is ${answer} at ${JSON.stringify(values)}`).toBe(true);
    return 'answer';
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    expect(quantityOf(error.quantity), error.message).toBeDefined();
    expect(error.accepted).not.toBe('');
    return 'refusal';
  }
}

describe.each(await everyFormula())('$path', ({ formula }) => {
  it('answers or refuses by name all over the vocabulary’s ranges', () => {
    let answers = 0;
    fc.assert(
      fc.property(quantities(formula.from), (values) => {
        if (answersOrRefuses(formula, values) === 'answer') answers++;
      }),
      { seed: 6, numRuns: 500 },
    );
    expect(answers, 'of 500').toBeGreaterThan(100);
  });

  it('refuses by name, or answers, whatever it is given', () => {
    const anything = fc.record(Object.fromEntries(formula.from.map((id: QuantityName) => [id, strange])));
    fc.assert(
      fc.property(anything, (values) => void answersOrRefuses(formula, values)),
      { seed: 7, numRuns: 500 },
    );
  });

  it.each([NaN, Infinity, -Infinity])('refuses %s in any single place', (bad) => {
    fc.assert(
      fc.property(quantities(formula.from, formula.sample), (values) => {
        for (const id of formula.from as readonly QuantityName[]) {
          const verdict = bad === Infinity && mayBeGivenInfinite[formula.gives]?.includes(id) ? 'answer' : 'refusal';
          expect(answersOrRefuses(formula, { ...values, [id]: bad }), `${id}: ${bad}`).toBe(verdict);
        }
      }),
      { seed: 8, numRuns: 20 },
    );
  });
});
