import { describe, expect, it } from 'vitest';
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
