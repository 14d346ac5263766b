import { expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { refusalInWords } from './answer.ts';

it('says what the core refuses with the quantity’s name and unit', () => {
  const refused = new OutOfRange('entrance-pupil-distance', -4.16, 'a subject in front of the pupil');
  expect(refusalInWords(refused).replaceAll('\u202f', ' ')).toBe(
    'The entrance pupil distance would be −4.16 mm. Needed: a subject in front of the pupil.',
  );
});
