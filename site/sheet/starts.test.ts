import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { printedLine } from '#core/quantity/printed-line.ts';
import { solveFor, type Solvable } from '#core/quantity/solve.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { formulaTopics } from '#site/formula-topics.ts';
import { startOf } from './starts.ts';

const formulas = formulaTopics().flatMap((topic) => topic.formulas);

describe.each(formulas)('the sheet’s first numbers of $id', ({ id, formula }) => {
  const from = formula.from as readonly QuantityName[];
  const values = Object.fromEntries(from.map((name) => [name, startOf(id, name)]));

  it('can all be typed, and so can what they give', () => {
    const all = { ...values, [formula.gives]: evaluateFormula(formula, values as Record<QuantityName, number>) };
    for (const [name, value] of Object.entries(all)) {
      const { least, most } = quantityOf(name as QuantityName);
      expect(value, name).toBeGreaterThanOrEqual(least);
      expect(value, name).toBeLessThanOrEqual(most);
    }
  });

  it('make an equation that holds as it is printed', () => {
    expect(printedLine(formula, values).kind).toBe('numbers');
  });

  it.each(from)('are found again from the answer: %s', (ask) => {
    const left = evaluateFormula(formula, values as Record<QuantityName, number>);
    const { [ask]: was, ...others } = values;
    const { roots, spans } = solveFor(formula as Solvable, { ask, given: { ...others, [formula.gives]: left } });
    const found = [...spans, ...roots.map(({ value }) => ({ from: value, to: value }))];
    const rounding = 1e-6 * Math.abs(was!);
    expect(found.some(({ from, to }) => was! >= from - rounding && was! <= to + rounding)).toBe(true);
  });
});
