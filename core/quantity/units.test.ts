import { describe, expect, it } from 'vitest';
import { readableUnit, typedUnitWorth, unitWords, unitWorth } from './units.ts';
import { vocabulary, type BaseUnit } from './vocabulary.ts';

describe('unitWorth', () => {
  it.each<[unit: string, base: BaseUnit, worth: number]>([
    ['mm', 'mm', 1],
    ['cm', 'mm', 10],
    ['m', 'mm', 1000],
    ['in', 'mm', 25.4],
    ['"', 'mm', 25.4],
    ['ft', 'mm', 304.8],
    ['µm', 'mm', 0.001],
    ['μm', 'mm', 0.001],
    ['um', 'mm', 0.001],
    ['nm', 'mm', 0.000001],
    ['millimeter', 'mm', 1],
    ['Centimetres', 'mm', 10],
    ['metres', 'mm', 1000],
    ['nanometers', 'mm', 0.000001],
    ['microns', 'mm', 0.001],
    ['in.', 'mm', 25.4],
    ['seconds', 's', 1],
    ['cm', 'm', 0.01],
    ['ft', 'm', 0.3048],
    ['ms', 's', 0.001],
    ['″', 's', 1],
    ['min', 's', 60],
    ['h', 's', 3600],
    ['D', 'dpt', 1],
    ['lp/mm', '1/mm', 1],
    ['px/mm', '1/mm', 1],
    ['°', 'rad', Math.PI / 180],
    ['deg/s', 'rad/s', Math.PI / 180],
    ['m/s', 'mm/s', 1000],
    ['EV', 'stops', 1],
    ['%', '', 0.01],
    ['×', '', 1],
    ['', 'mm', 1],
  ])('makes one %s of %s worth %d', (unit, base, worth) => {
    expect(unitWorth(base, unit)).toBe(worth);
  });

  it.each(['MM', 'Cm', 'IN', 'NM'])('takes %s as the keyboard of a phone gives it', (unit) => {
    expect(unitWorth('mm', unit)).toBe(unitWorth('mm', unit.toLowerCase()));
  });

  it.each(['s', 'q', 'constructor', '__proto__', '%', 'micrometre', 'illimetre', '.'])(
    'knows no length of one %s',
    (unit) => {
      expect(unitWorth('mm', unit)).toBeUndefined();
    },
  );
});

describe('typedUnitWorth', () => {
  it('takes a bare number in the unit that is shown', () => {
    expect(typedUnitWorth(vocabulary.wavelength, '')).toBe(1e-6);
    expect(typedUnitWorth(vocabulary['focal-length'], '')).toBe(1);
    expect(typedUnitWorth(vocabulary.contrast, '')).toBe(0.01);
  });

  it('tells line pairs from pixels, which are half as wide', () => {
    expect(typedUnitWorth(vocabulary['spatial-frequency'], 'lp/mm')).toBe(1);
    expect(typedUnitWorth(vocabulary['spatial-frequency'], 'px/mm')).toBeUndefined();
    expect(typedUnitWorth(vocabulary['pixels-per-millimetre'], 'px/mm')).toBe(1);
    expect(typedUnitWorth(vocabulary['pixels-per-millimetre'], 'lp/mm')).toBeUndefined();
  });

  it('lets pure numbers be so many times something, unless they count or are written in a way of their own', () => {
    expect(typedUnitWorth(vocabulary['converter-factor'], '×')).toBe(1);
    expect(typedUnitWorth(vocabulary['crop-factor'], 'x')).toBe(1);
    expect(typedUnitWorth(vocabulary['frame-count'], 'x')).toBeUndefined();
    expect(typedUnitWorth(vocabulary['frame-count'], 'frames')).toBe(1);
    expect(typedUnitWorth(vocabulary['f-number'], 'x')).toBeUndefined();
    expect(typedUnitWorth(vocabulary['flash-power'], '%')).toBeUndefined();
  });
});

describe('unitWords', () => {
  it.each([
    ['s', 'a time'],
    ['mm', 'a length'],
    ['m/s', 'a speed'],
    ['°', 'an angle'],
    ['%', 'a share'],
    ['×', 'a ratio'],
    ['q', undefined],
    ['constructor', undefined],
  ])('calls one %s %s', (unit, words) => {
    expect(unitWords(unit)).toBe(words);
  });
});

describe('readableUnit', () => {
  it.each([
    ['mm', 1000, 'm'],
    ['mm', 999, 'mm'],
    ['mm', 0.01, 'mm'],
    ['mm', 0.0099, 'µm'],
    ['mm', 0.00005, 'nm'],
    ['mm', -1000, 'm'],
    ['mm', 0, 'mm'],
    ['µm', 0.35, 'µm'],
    ['µm', 1, 'mm'],
    ['nm', 0.01, 'nm'],
    ['s', 119, 's'],
    ['s', 120, 'min'],
    ['s', 7199, 'min'],
    ['s', 7200, 'h'],
    ['s', 0.05, 'ms'],
    ['mm/s', 1000, 'm/s'],
    ['lx', 200000, 'lx'],
  ] as const)('shows what is in %s, of size %d, in %s', (shown, value, unit) => {
    expect(readableUnit(shown, value)).toBe(unit);
  });

  it('leaves the dust of rounding in the unit it is in', () => {
    expect(readableUnit('mm', 1e-15)).toBe('mm');
  });
});
