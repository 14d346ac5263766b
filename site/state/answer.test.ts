import { expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { answerOr, refusalInWords } from './answer.ts';

it('says what the core refuses with the quantity’s name and unit', () => {
  const refused = new OutOfRange('entrance-pupil-distance', -4.16, 'a subject in front of the pupil');
  expect(refusalInWords(refused).replaceAll('\u202f', ' ')).toBe(
    'The entrance pupil distance would be −4.16 mm. Needed: a subject in front of the pupil.',
  );
});

it('has words for what the core refuses, and lets faults pass', () => {
  const refuse = () => {
    throw new OutOfRange('magnification', -1, 'a finite number above 0');
  };
  expect(answerOr('none', refuse)).toEqual({ words: 'none' });
  expect(() =>
    answerOr('none', () => {
      throw new TypeError('a fault');
    }),
  ).toThrow('a fault');
});
