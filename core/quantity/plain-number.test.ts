import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainNumber, readPlainNumber } from './plain-number.ts';

const finite = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('plainNumber', () => {
  it.each([
    [8, '8'],
    [-0.5, '-0.5'],
    [0.00055, '0.00055'],
    [1e-7, '0.0000001'],
    [-1.25e-9, '-0.00000000125'],
    [1e21, '1000000000000000000000'],
    [1.5e22, '15000000000000000000000'],
    [-0, '0'],
  ])('writes %d as %s', (value, text) => {
    expect(plainNumber(value)).toBe(text);
  });

  it('writes every finite number in digits that read back as the same number', () => {
    fc.assert(
      fc.property(finite, (value) => {
        const text = plainNumber(value);
        expect(text).toMatch(/^-?\d+(\.\d+)?$/);
        expect(readPlainNumber(text)).toBe(value + 0);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });

  it.each([NaN, Infinity, -Infinity])('refuses %d', (value) => {
    expect(() => plainNumber(value)).toThrow(RangeError);
  });
});

describe('readPlainNumber', () => {
  it.each([
    ['12', 12],
    ['+3', 3],
    ['.5', 0.5],
    ['5.', 5],
    ['1e-7', 1e-7],
    ['1E3', 1000],
    ['-0', 0],
  ])('reads %s', (text, value) => {
    expect(readPlainNumber(text)).toBe(value);
  });

  it.each([
    '',
    ' ',
    ' 1',
    '1 ',
    '1,5',
    '1_000',
    '0x10',
    '0b1',
    'Infinity',
    'NaN',
    '1e999',
    '-1e999',
    '1e',
    '--1',
    '1.2.3',
    '.',
    '12 mm',
    '１',
  ])('refuses %j', (text) => {
    expect(readPlainNumber(text)).toBeUndefined();
  });

  it('makes of any text a finite number or nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,eE+-xnaIity ') }), (text) => {
        const value = readPlainNumber(text);
        if (value !== undefined) expect(Number.isFinite(value)).toBe(true);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});
