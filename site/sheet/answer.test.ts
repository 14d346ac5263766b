import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { formulaTopics } from '#site/formula-topics.ts';
import { asTyped, inField, sheetAnswer } from './answer.ts';
import { startOf } from './starts.ts';

const formulas = formulaTopics().flatMap((topic) => topic.formulas);
const ask = (id: string, letter: QuantityName, given: Readonly<Record<string, number>>) => {
  const { formula } = formulas.find((one) => one.id === id)!;
  return sheetAnswer(formula, letter, given);
};
type Answer = ReturnType<typeof sheetAnswer>;
/** The narrow space between number and unit as one that can be typed. */
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const textsOf = (answer: Answer) =>
  answer.kind === 'found' ? answer.found.map(({ text }) => plain(text)) : plain(answer.why);
const moreOf = (answer: Answer) => (answer.kind === 'found' ? plain(answer.more) : '');

describe('what the sheet answers', () => {
  it('is the formula’s own result where the left side is asked for', () => {
    const given = { 'f-number': 8, magnification: 1, 'pupil-magnification': 1 };
    expect(textsOf(ask('effective-f-number', 'effective-f-number', given))).toEqual(['f/16']);
  });

  it('is every value that fits: 225 mm from the sensor a 50 mm lens is in focus at 1:2 and at 2:1', () => {
    const answer = ask('focus-distance', 'magnification', {
      'focus-distance': 225,
      'focal-length': 50,
      'principal-separation': 0,
    });
    expect(textsOf(answer)).toEqual(['0.5×', '2×']);
    expect(moreOf(answer)).toBe('Two answers fit. Looked for: magnification from 0.02× to 20×.');
  });

  it('is a stretch where a count leaves room, with ends that still give that count', () => {
    const given = { 'frame-count': 13, 'depth-of-field': 0.5, overlap: 0.25 };
    const answer = ask('frame-count', 'subject-depth', given);
    expect(textsOf(answer)).toEqual(['from 4.63 mm to 5 mm']);
    expect(moreOf(answer)).toMatch(/^Any subject depth in between does as well; the middle one is put in below\./);
    for (const depth of [4.63, 5]) {
      expect(textsOf(ask('frame-count', 'frame-count', { ...given, 'subject-depth': depth }))).toEqual(['13']);
    }
  });

  it('is a count between two whole numbers with what both of them give', () => {
    const answer = ask('stack-travel', 'frame-count', { 'stack-travel': 3.3, 'frame-step': 0.5 });
    expect(textsOf(answer)).toEqual(['7.6']);
    expect(moreOf(answer)).toMatch(/^No whole number fits exactly: 7 gives 3 mm, 8 gives 3.5 mm\./);
  });

  it('is a number as it is, and by its mark where it stands for one', () => {
    const given = { 'focal-length': 80, 'entrance-pupil': 80 / 2 ** 3.5 };
    expect(textsOf(ask('f-number-from-aperture', 'f-number', given))).toEqual(['f/11.3 (marked f/11)']);
  });
});

describe('where there is no answer, a sentence says why', () => {
  it('with what can be had, and where it was looked for', () => {
    const given = { 'focus-distance': 150, 'focal-length': 50, 'principal-separation': 0 };
    expect(textsOf(ask('focus-distance', 'magnification', given))).toBe(
      'Focus distance cannot be 150 mm: with these numbers it is from 200 mm to 2.6 m. Looked for: magnification from 0.02× to 20×.',
    );
  });

  it('with what a number would have to be', () => {
    const given = { 'subject-distance': 50, 'focal-length': 50 };
    expect(textsOf(ask('image-distance-of-subject', 'image-distance', given))).toMatch(
      /^The subject distance would be 50 mm\. Needed: .+\.$/,
    );
  });

  it('with what is missing', () => {
    expect(textsOf(ask('effective-f-number', 'magnification', { 'f-number': 8 }))).toBe(
      'Fill in the effective f-number and the pupil magnification, and the answer follows.',
    );
  });
});

describe.each(formulas)('$id, at the ends of its fields', ({ formula }) => {
  const from = formula.from as readonly QuantityName[];
  const letters = [formula.gives, ...from];
  it.each(letters)('answers %s in words or numbers, never with nothing', (letter) => {
    for (const end of ['least', 'most'] as const) {
      const given = Object.fromEntries(letters.map((name) => [name, quantityOf(name)[end]]));
      const { [letter]: _, ...others } = given;
      const answer = sheetAnswer(formula, letter, others);
      const said = `${textsOf(answer)} ${moreOf(answer)}`;
      expect(said).not.toMatch(/NaN|undefined|\[object/);
      expect(said.trim()).not.toBe('');
    }
  });
});

describe.each(formulas)('the fields of $id', ({ id, formula }) => {
  const from = formula.from as readonly QuantityName[];
  it('show the number that they stand for, and take an answer as they show it', () => {
    const values = Object.fromEntries(from.map((name) => [name, startOf(id, name)])) as Record<QuantityName, number>;
    for (const name of from) expect(inField(name, values[name]!).text.length, name).toBeLessThan(15);
    const answer = evaluateFormula(formula, values);
    const { value } = asTyped(formula.gives, answer);
    expect(Math.abs(value! - answer)).toBeLessThanOrEqual(5e-3 * Math.max(1, Math.abs(answer)));
  });
});
