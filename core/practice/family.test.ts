import { describe, expect, it } from 'vitest';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { choiceFamily, numberFamily } from './family.ts';

const common = { id: 'made-up', question: 'How long?', hint: 'Look.', working: [], mistakes: [] };
const tolerance = { relative: 0.02, because: 'it is a test' };

describe('numberFamily', () => {
  it('knows in its functions what its givens draw', () => {
    const family = numberFamily({
      ...common,
      asks: 'extension',
      tolerance,
      givens: () => ({ 'first-ring.extension': 12, subject: 'bay leaf' }),
      // Would not compile if a given were not a number here, or a word there.
      answer: (given) => given['first-ring.extension'] + given.subject.length,
    });
    expect(family).toMatchObject({ ...common, kind: 'number', asks: 'extension' });
    expect(family.answer({ 'first-ring.extension': 12, subject: 'bay leaf' })).toBe(20);
  });

  it('has the last number of its working for an answer, unless it says otherwise', () => {
    const plan = {
      ...common,
      asks: 'working-distance',
      tolerance,
      givens: () => ({ 'focal-length': 50, magnification: 1, 'front-principal-depth': 20 }),
      working: [{ formula: subjectDistanceFormula }, { formula: workingDistanceFormula }, { note: 'Done.' }],
    } as const;
    const given = plan.givens();
    expect(numberFamily(plan).answer(given)).toBe(80);
    expect(numberFamily({ ...plan, answer: () => 7 }).answer(given)).toBe(7);
    expect(() => numberFamily({ ...plan, working: [] }).answer(given)).toThrow(/no formula to give the answer/);
    expect(() => numberFamily(plan).answer({ ...given, magnification: 0 })).toThrow(OutOfRange);
  });

  it('does not compile with a misspelled quantity, for a word is no number', () => {
    const plan = { ...common, asks: 'extension', tolerance, answer: () => 12 } as const;
    // @ts-expect-error focal-lenght is no quantity, so it should be a word
    expect(numberFamily({ ...plan, givens: () => ({ 'focal-lenght': 50 }) }).kind).toBe('number');
  });
});

describe('choiceFamily', () => {
  it('does not compile with an answer that is not offered', () => {
    const plan = { ...common, givens: () => ({ extension: 12 }), options: { yes: 'Yes', no: 'No' } };
    expect(choiceFamily({ ...plan, answer: ({ extension }) => (extension > 6 ? 'yes' : 'no') }).kind).toBe('choice');
    // @ts-expect-error perhaps is not among the options
    expect(choiceFamily({ ...plan, answer: () => 'perhaps' }).kind).toBe('choice');
  });
});
