import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from './errors.ts';
import { exactFNumber, exactShutterTime } from './nominal.ts';
import { printNumber, printQuantity, type PrintOptions } from './print.ts';
import { quantityIds, type QuantityName } from './vocabulary.ts';

const gap = '\u202f';
const print = (name: QuantityName, value: number, options?: PrintOptions) =>
  printQuantity(name, value, options).replaceAll(gap, ' ');

describe('printQuantity', () => {
  it.each<[name: QuantityName, value: number, text: string]>([
    ['focal-length', 50, '50 mm'],
    ['focal-length', 72.5001, '72.5 mm'],
    ['subject-distance', 1234.5, '1.23 m'],
    ['subject-distance', 999.9, '1 m'],
    ['hyperfocal-distance', 1e7, '10000 m'],
    ['depth-of-field', 0.0123, '0.0123 mm'],
    ['depth-of-field', 0.00537, '5.37 µm'],
    ['working-distance', -12, '−12 mm'],
    ['circle-of-confusion', 0.03, '30 µm'],
    ['defocus-blur', 2.5, '2.5 mm'],
    ['defocus-blur', 0, '0 µm'],
    ['defocus-blur', 1e-15, '0 µm'],
    ['wavelength', 0.00055, '550 nm'],
    ['f-number', 0.95, 'f/0.95'],
    ['f-number', 8, 'f/8'],
    ['f-number', 11.2, 'f/11.2'],
    ['effective-f-number', 16, 'f/16'],
    ['exposure-time', 1 / 200, '1/200 s'],
    ['exposure-time', 0.25, '1/4 s'],
    ['exposure-time', 0.3, '0.3 s'],
    ['exposure-time', 2.5, '2.5 s'],
    ['exposure-time', 0, '0 s'],
    ['flash-duration', 1e-6, '1/1000000 s'],
    ['magnification', 1, '1×'],
    ['magnification', 2 / 3, '0.667×'],
    ['converter-factor', 1.4, '1.4×'],
    ['close-up-power', 3, '+3 dpt'],
    ['contrast', 0.4567, '45.7 %'],
    ['contrast', 5e-9, '0 %'],
    ['contrast', 2e-8, '0.000002 %'],
    ['overlap', -0.5, '−50 %'],
    ['light-loss', 1.7399, '1.7 stops'],
    ['light-loss', 1.04, '1 stop'],
    ['light-loss', -0.04, '0 stops'],
    ['iso', 409600, '409600'],
    ['frame-count', 12, '12'],
    ['flash-power', 1 / 128, '1/128'],
    ['flash-power', 1, '1'],
    ['subject-tilt', Math.PI / 4, '45°'],
    ['shake-rate', Math.PI / 180, '1°/s'],
    ['spatial-frequency', 83.3333, '83.3 lp/mm'],
    ['pixels-per-millimetre', 166.66, '167 px/mm'],
    ['subject-speed', 2500, '2.5 m/s'],
    ['stack-time', 754, '12.6 min'],
    ['time-limit', 9000, '2.5 h'],
    ['settling-time', 0.05, '50 ms'],
    ['guide-number', 14, '14 m'],
    ['reversed-lens.focal-length', 28, '28 mm'],
  ])('writes %s of %d as %s', (name, value, text) => {
    expect(print(name, value)).toBe(text);
  });

  it('never lets a line break between number and unit', () => {
    expect(printQuantity('focal-length', 50)).toBe('50\u202fmm');
  });

  it('writes an exact value of the marked series by its mark, or as it is when asked to', () => {
    const stop = exactFNumber(11)!;
    expect(print('f-number', stop)).toBe('f/11');
    expect(print('f-number', stop, { exact: true })).toBe('f/11.3');
    const time = exactShutterTime(1 / 125)!;
    expect(print('exposure-time', time)).toBe('1/125 s');
    expect(print('exposure-time', time, { exact: true })).toBe('1/128 s');
  });

  it.each([
    [0.5, '1:2'],
    [2, '2:1'],
    [1, '1:1'],
    [0.63, '1:1.59'],
    [0, '0×'],
  ])('writes a magnification of %d as a ratio when asked to: %s', (value, text) => {
    expect(print('magnification', value, { ratio: true })).toBe(text);
  });

  it.each(quantityIds)('writes infinity of %s without unit or mark', (id) => {
    expect(printQuantity(id, Infinity)).toBe('∞');
    expect(printQuantity(id, -Infinity)).toBe('−∞');
  });

  it.each(quantityIds)('refuses by name a %s that is not a number', (id) => {
    expect(() => printQuantity(id, NaN)).toThrow(OutOfRange);
    expect(() => printNumber(id, NaN)).toThrow(`${id} is NaN`);
  });

  it('writes every number that there is, in digits', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quantityIds), fc.double({ noNaN: true }), fc.boolean(), (id, value, exact) => {
        const text = printQuantity(id, value, { exact, ratio: exact });
        expect(text).not.toMatch(/NaN|undefined|Infinity|\de[+-]|-/);
        expect(text).toMatch(/[\d∞]/);
      }),
      { seed: 2, numRuns: 5000 },
    );
  });
});

describe('printNumber', () => {
  it.each<[name: QuantityName, value: number, number: string, unit: string]>([
    ['focal-length', 50, '50', 'mm'],
    ['f-number', 8, '8', ''],
    ['magnification', 0.5, '0.5', ''],
    ['exposure-time', 1 / 200, '1/200', 's'],
    ['subject-tilt', Math.PI / 6, '30', '°'],
    ['contrast', 0.25, '25', '%'],
    ['light-loss', 2, '2', 'stops'],
    ['close-up-power', 4, '+4', 'dpt'],
    ['working-distance', -3, '−3', 'mm'],
    ['far-limit', Infinity, '∞', ''],
  ])('gives %s of %d as %s and %s', (name, value, number, unit) => {
    expect(printNumber(name, value)).toEqual({ number, unit });
  });
});
