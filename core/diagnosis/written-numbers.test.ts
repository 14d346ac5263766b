import { describe, expect, it } from 'vitest';
import { asPlainNumber, numbersIn, type WrittenNumber } from './written-numbers.ts';

/** One line a number: its text, how it is written, its unit, which of a pair, and half of its last figure in thousandths of it. */
const read = (text: string): readonly string[] =>
  numbersIn(text).map(({ text: number, form, unit, ofPair, rounding, names }) =>
    [number, form, unit || '–', ofPair, Math.round(1000 * rounding), ...(names ? [names] : [])].join(' '),
  );

describe('numbers in a text', () => {
  it.each<[string, readonly string[]]>([
    ['a lens of 50 mm', ['50 mm plain mm 0 10']],
    ['50mm', ['50mm plain mm 0 10']],
    ['36 × 24 mm', ['36 mm plain mm 1 14', '24 mm plain mm 2 21']],
    ['36mm x 24mm', ['36 mm plain mm 1 14', '24 mm plain mm 2 21']],
    ['6000 x 4000', ['6000 plain – 1 0', '4000 plain – 2 0']],
    ['10x/0.25', ['10× times – 0 0 objective-magnification', '0.25 plain – 0 0 numerical-aperture']],
    ['f/8', ['f/8 f-number – 0 63']],
    ['f 2.8', ['f/2.8 f-number – 0 18']],
    ['ƒ/5,6', ['f/5,6 f-number – 0 9']],
    ['f 50 mm', ['50 mm plain mm 0 10']],
    ['1:2.8', ['1:2.8 ratio – 0 0']],
    ['1/125 s', ['1/125 s fraction s 0 0']],
    ['1 1/2 s', ['1 1/2 s fraction s 0 0']],
    ['x2', ['2× times – 0 250']],
    ['1.4x', ['1.4× times – 0 36']],
    ['three or 3 times', ['3× times – 0 167']],
    ['12 + 20 mm', ['32 mm sum mm 0 0']],
    ['12 mm + 20,5 mm + 3', ['35.5 mm sum mm 0 0']],
    ['+3 dpt', ['+3 dpt plain dpt 0 167']],
    ['-0.5', ['-0.5 plain – 0 100']],
    ['12 000 lx', ['12 000 lx plain lx 0 0']],
    ['.72', ['.72 plain – 0 7']],
    ['0', ['0 plain – 0 0']],
    ['24 MP', ['24 MP plain mp 0 21']],
    ['5 µm and 550 nm', ['5 µm plain µm 0 100', '550 nm plain nm 0 1']],
    ['N_w0 and body2 have none', []],
    ['', []],
  ])('are found with their units and how finely they are written: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  it('stand where they say, with nothing between that is theirs', () => {
    const text = 'm 0.72 of 50 mm at f/8, 36 × 24 mm';
    const places = numbersIn(text).map(({ start, end }) => text.slice(start, end));
    expect(places).toEqual(['0.72', '50 mm', 'f/8', '36 × 24 mm', '36 × 24 mm']);
  });

  it('are plain numbers without their unit', () => {
    const plain = (text: string) => asPlainNumber(numbersIn(text)[0] as WrittenNumber);
    expect([plain('24 MP'), plain('6 000 px'), plain('1 234 567 px'), plain('4,5 µm')]).toEqual([
      24, 6000, 1234567, 4.5,
    ]);
  });
});
