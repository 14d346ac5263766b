import { describe, expect, it } from 'vitest';
import { filledText } from './text.ts';

const gap = '\u202f';

describe('filledText', () => {
  it('prints quantities as the trade writes them and words as they are', () => {
    const known = { 'f-number': 8, 'first-ring.extension': 12, subject: 'bay leaf' };
    expect(filledText('A {subject}, {first-ring.extension}, {f-number}.', known)).toBe(`A bay leaf, 12${gap}mm, f/8.`);
  });

  it.each([
    [8, 'an 8'],
    [11, 'an 11'],
    [18, 'an 18'],
    [85, 'an 85'],
    [800, 'an 800'],
    [50, 'a 50'],
    [100, 'a 100'],
    [110, 'a 110'],
    [180, 'a 180'],
  ])('gives a lens of %i mm its article', (length, words) => {
    expect(filledText('{a focal-length} lens', { 'focal-length': length })).toBe(`${words}${gap}mm lens`);
  });

  it('gives words and f-numbers theirs, with a capital where asked', () => {
    expect(filledText('{A subject} at {a f-number}', { subject: 'acorn', 'f-number': 4 })).toBe('An acorn at an f/4');
    expect(filledText('{A subject}', { subject: 'frost crystal' })).toBe('A frost crystal');
  });

  it('refuses a name that is not known, saying which are', () => {
    expect(() => filledText('{extension} more', { magnification: 1 })).toThrow(
      '{extension} is not known in “{extension} more”; known: magnification',
    );
  });
});
