import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { numericFormula, symbolicFormula } from '#site/controls/formula/render.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { everyFormula, quantitiesIn, sidesOf, type AnyFormula } from '#tests/support/every-formula.ts';
import { quantities } from '#tests/support/sample.ts';
import { texValue } from '#tests/support/tex-value.ts';

const samples = 120;
const rounding = { relative: 1e-9, because: 'a constant may be printed to ten figures; the rest is rounding' };

/** The function's answer, or undefined where it has no finite one: outside its range, or at infinity. */
function finiteAnswer(formula: AnyFormula, values: Record<string, number>): number | undefined {
  try {
    const answer = evaluateFormula(formula, values);
    expect(answer, `${formula.gives} at ${JSON.stringify(values)}`).not.toBeNaN();
    return Number.isFinite(answer) ? answer : undefined;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** Values of the inputs for which the formula has a finite answer. */
function someInputs(formula: AnyFormula): Record<string, number> {
  const found = fc
    .sample(quantities(formula.from, formula.sample), { seed: 2, numRuns: samples })
    .find((values) => finiteAnswer(formula, values) !== undefined);
  if (!found) throw new Error(`No sample of ${formula.gives} has a finite answer.`);
  return found;
}

function refused(formula: AnyFormula, values: Record<string, number>): string | undefined {
  try {
    evaluateFormula(formula, values);
    return undefined;
  } catch (error) {
    return error instanceof OutOfRange ? error.quantity : String(error);
  }
}

describe.each(await everyFormula())('$path', ({ name, formula, exports }) => {
  it('holds the function that its name promises', () => {
    expect(exports[name]).toBe(formula.evaluate);
  });

  it('names in its TeX what it gives and what it is computed from, no more and no less', () => {
    const { left, right } = sidesOf(formula.tex);
    expect(left).toBe(formula.gives);
    expect([...formula.from].sort()).toEqual([...quantitiesIn(right)].sort());
  });

  it('speaks the vocabulary', () => {
    for (const id of [formula.gives, ...formula.from]) expect(quantityOf(id), id).toBeDefined();
    for (const id of Object.keys(formula.sample ?? {})) expect(formula.from).toContain(id);
  });

  it('renders in letters and in numbers', () => {
    expect(symbolicFormula(formula.tex)).toContain(`data-quantity="${formula.gives}"`);
    const ids = [formula.gives, ...formula.from];
    const inNumbers = numericFormula(formula, Object.fromEntries(ids.map((id) => [id, '1'])));
    for (const id of ids) expect(inNumbers).toContain(`data-number="${id}"`);
  });

  it('refuses by name every input that is no number, or below zero where there is no such thing', () => {
    const values = someInputs(formula);
    for (const id of formula.from) {
      expect(refused(formula, { ...values, [id]: NaN }), `${id} that is no number`).toBe(id);
      // A chain with a lens that gathers the light, before the camera, gains some: a loss below zero.
      const isSigned = quantityOf(id).least < 0 || id === 'light-loss';
      if (!isSigned) expect(refused(formula, { ...values, [id]: -1e-9 }), `negative ${id}`).toBe(id);
    }
  });

  it('computes what its TeX says', () => {
    const inTex = texValue(sidesOf(formula.tex).right);
    let compared = 0;
    let passedOver = 0;
    fc.assert(
      fc.property(quantities(formula.from, formula.sample), (values) => {
        const answer = finiteAnswer(formula, values);
        if (answer === undefined) return void passedOver++;
        compared++;
        expect(inTex(values)).toEqual(closeTo(answer, rounding));
      }),
      { seed: 1, numRuns: samples },
    );
    // An answer that is refused or infinite cannot be compared. With many of those little would have been checked.
    expect(compared, `${passedOver} of ${samples} samples had no finite answer: narrow \`sample\``).toBeGreaterThan(
      0.9 * samples,
    );
  });
});

describe.each((await everyFormula()).filter(({ formula }) => formula.tex.includes('/1000') || formula.metres))(
  'metres in $path',
  ({ formula }) => {
    it('are those of the length that is divided by 1000, which no page then prints', () => {
      expect(formula.tex.match(/\\q\{([a-z.-]+)\}\/1000/)?.[1]).toBe(formula.metres);
      expect(symbolicFormula(formula.tex)).not.toContain('1000');
      expect(numericFormula(formula, {})).not.toContain('1000');
    });
  },
);

it.each((await everyFormula()).filter(({ formula }) => formula.from.some((id) => quantityOf(id).base === 'stops')))(
  '$path takes stops in exponents alone, where they are printed without their unit',
  ({ formula }) => {
    const beside = formula.tex.slice(formula.tex.indexOf('=')).replaceAll(/\^\{(?:[^{}]|\{[^{}]*\})*\}/g, '');
    for (const id of formula.from.filter((id) => quantityOf(id).base === 'stops'))
      expect(beside).not.toContain(`\\q{${id}}`);
  },
);
