import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { solveFor, type Solvable } from '#core/quantity/solve.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { everyFormula, type AnyFormula } from '#tests/support/every-formula.ts';
import { quantities } from '#tests/support/sample.ts';

const rounding = { relative: 1e-9, because: 'the letter is found to its last digit; steep places enlarge that' };
const unmoved = { relative: 1e-11, because: 'rounding: from the one to the other the left side does not change' };

function answerOf(formula: AnyFormula, values: Record<string, number>): number | undefined {
  try {
    return evaluateFormula(formula, values);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

const letters = (await everyFormula()).flatMap(({ path, formula }) =>
  (formula.from as readonly QuantityName[]).map((letter) => ({ path, formula, letter })),
);

describe('every formula solved for every letter', () => {
  it('has found them', () => expect(letters.length).toBeGreaterThan(300));

  it.each(letters)('$path for $letter', ({ formula, letter }) => {
    const { least, most } = quantityOf(letter);
    let solved = 0;
    fc.assert(
      fc.property(quantities(formula.from, formula.sample), (values) => {
        const left = answerOf(formula, values);
        if (left === undefined) return;
        solved++;
        const { [letter]: was, ...others } = values;
        const given = { ...others, [formula.gives]: left };
        const { roots, spans, reach } = solveFor(formula as Solvable, { ask: letter, given });

        const ends = spans.flatMap(({ from, to }) => [from, to, (from + to) / 2]);
        for (const value of [...roots.map((root) => root.value), ...ends]) {
          expect(value).toBeGreaterThanOrEqual(least);
          expect(value).toBeLessThanOrEqual(most);
          expect(answerOf(formula, { ...values, [letter]: value }), `${letter} ${value}`).toEqual(
            closeTo(left, rounding),
          );
        }
        const isBack = ({ from, to }: { from: number; to: number }) => {
          const nearest = Math.min(Math.max(was!, from), to);
          const between = answerOf(formula, { ...values, [letter]: (nearest + was!) / 2 });
          return Math.abs(nearest - was!) <= 1e-6 * Math.abs(was!) || closeTo(left, unmoved).asymmetricMatch(between);
        };
        const found = [...spans, ...roots.map(({ value }) => ({ from: value, to: value }))];
        expect(found.some(isBack), `${was} among ${JSON.stringify(found)}`).toBe(true);
        expect(
          reach.some((part) => left >= part.least && left <= part.most),
          'within reach',
        ).toBe(true);
        for (const { value, branch } of roots) {
          expect(value >= branch.from && value <= branch.to).toBe(true);
        }
      }),
      { seed: 21, numRuns: 12 },
    );
    expect(solved).toBeGreaterThan(8);
  });
});
