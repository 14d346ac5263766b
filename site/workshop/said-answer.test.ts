import { describe, expect, it } from 'vitest';
import { saidAnswer } from './said-answer.ts';

describe('what is so, on the running order', () => {
  it.each([
    ['15 mm', '15\u202fmm: at 0.5× everything is half as large.'],
    ['No', 'No: {contrast} is left.'],
    ['More than half', 'More: three quarters.'],
    ['A third', 'A third: 0.6 mm.'],
    ['Air', 'Air.'],
    ['144 mm', 'Often 144 mm: a quarter of life size.'],
    ['One', 'About one, not two.'],
  ])('says “%s” once where what is said for it begins so', (option, caption) => {
    expect(saidAnswer(option, caption)).toBe(caption);
  });

  it.each([
    ['The lens', 'The sensor catches less.', 'The lens. The sensor catches less.'],
    ['No', 'Nothing is left.', 'No. Nothing is left.'],
    ['Which one?', 'Neither.', 'Which one? Neither.'],
    ['Air', '', 'Air.'],
  ])('says the option “%s” before what does not', (option, caption, said) => {
    expect(saidAnswer(option, caption)).toBe(said);
  });

  it('is what is said, where no option is so', () => {
    expect(saidAnswer(undefined, 'See for yourselves.')).toBe('See for yourselves.');
  });
});
