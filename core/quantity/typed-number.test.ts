import { describe, expect, it } from 'vitest';
import { tidied, typedNumber, type TypedForm } from './typed-number.ts';

const typed = (text: string) => typedNumber(tidied(text));

describe('tidied', () => {
  it.each([
    [' 12\u202fmm ', '12 mm'],
    ['12\u2009000', '12 000'],
    ['\u22125', '-5'],
    ['–5', '-5'],
    ['１２．５', '12.5'],
    ['1∶2', '1:2'],
    ['1⁄2', '1/2'],
    ['1½', '1 1/2'],
    ['\u200e8\u200f', '8'],
    ['\n\t', ''],
  ])('makes of %j the text %j', (text, tidy) => {
    expect(tidied(text)).toBe(tidy);
  });

  it('keeps what only looks like a digit apart from digits', () => {
    expect(tidied('10²')).toBe('10²');
  });
});

describe('typedNumber', () => {
  it.each<[text: string, value: number, form: TypedForm, unit: string]>([
    ['12', 12, 'plain', ''],
    ['12 mm', 12, 'plain', 'mm'],
    ['1.2cm', 1.2, 'plain', 'cm'],
    ['1,5', 1.5, 'plain', ''],
    ['0,125', 0.125, 'plain', ''],
    ['1,4142', 1.4142, 'plain', ''],
    [',5 mm', 0.5, 'plain', 'mm'],
    ['5.', 5, 'plain', ''],
    ['1.500', 1.5, 'plain', ''],
    ['+3 dpt', 3, 'plain', 'dpt'],
    ['− 4 mm', -4, 'plain', 'mm'],
    ['12 000 mm', 12000, 'plain', 'mm'],
    ['1 234 567,5', 1234567.5, 'plain', ''],
    ['1 500,250', 1500.25, 'plain', ''],
    ['1/200 s', 1 / 200, 'fraction', 's'],
    ['1 / 200', 1 / 200, 'fraction', ''],
    ['1/12 000', 1 / 12000, 'fraction', ''],
    ['1 1/2 in', 1.5, 'fraction', 'in'],
    ['250 1/mm', 250, 'plain', '1/mm'],
    ['1½ in', 1.5, 'fraction', 'in'],
    ['-1½ in', -1.5, 'fraction', 'in'],
    ['2 100/200 in', 2.5, 'fraction', 'in'],
    ['½"', 0.5, 'fraction', '"'],
    ['1:2', 0.5, 'ratio', ''],
    ['1 : 1,5', 1 / 1.5, 'ratio', ''],
    ['f/11', 11, 'f-number', ''],
    ['F 11', 11, 'f-number', ''],
    ['f11', 11, 'f-number', ''],
    ['ƒ/5,6', 5.6, 'f-number', ''],
    ['f:8', 8, 'f-number', ''],
    ['×2', 2, 'times', ''],
    ['x 2', 2, 'times', ''],
    ['2x', 2, 'plain', 'x'],
    ['0x10', 0, 'plain', 'x10'],
    ['1e3', 1, 'plain', 'e3'],
    ['-0', 0, 'plain', ''],
  ])('reads %j', (text, value, form, unit) => {
    expect(typed(text)).toEqual({ kind: 'number', value, form, unit });
  });

  it.each(['1,500', '-1,500', '12,000 mm', '999,999', '1/1,500', '1:1,000'])('does not guess what %j means', (text) => {
    const number = typed(text);
    expect(number).toMatchObject({ kind: 'no-number' });
    expect(number.kind === 'no-number' && number.why).toMatch(/^may mean \d+ or [\d.]+\. Write the one you mean$/);
  });

  it('names both things that 1,500 may mean', () => {
    expect(typed('1,500')).toMatchObject({ why: 'may mean 1500 or 1.5. Write the one you mean' });
  });

  it.each(['1.500,5', '1,500.5', '1.500.000', '1,2,3', '1..5'])('says what is wrong with %j', (text) => {
    expect(typed(text)).toMatchObject({ why: 'has more than one point or comma. Write thousands without any' });
  });

  it.each(['twelve', 'Infinity', 'NaN', '∞', '-', '.', ',,', '--5', 'f/', 'f/1/2', 'ISO 400', 'x1:2'])(
    'finds no number in %j',
    (text) => {
      expect(typed(text)).toEqual({ kind: 'no-number', why: 'is not a number' });
    },
  );

  it.each([
    ['1:', ':'],
    ['5-10', '-10'],
    ['12 mm 3', 'mm 3'],
    ['½½', '1/2'],
    ['10²', '²'],
  ])('leaves what follows the number in %j to be refused as a unit', (text, unit) => {
    expect(typed(text)).toMatchObject({ unit });
  });

  it.each(['1/0', '0/0', '1:0', '9'.repeat(400)])('finds in %j nothing finite', (text) => {
    expect(typed(text)).toEqual({ kind: 'no-number', why: 'is too large to work with' });
  });
});
