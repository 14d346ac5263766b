import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { towardsX, towardsY, towardsZ } from './cie-1931.ts';
import { daylight, equalEnergy } from './illuminants.ts';
import { tristimulus } from './tristimulus.ts';

describe('tristimulus', () => {
  it('has a row for each of 81 wavelengths', () => {
    expect([towardsX, towardsY, towardsZ, daylight, equalEnergy].map((table) => table.length)).toEqual(
      Array(5).fill(81),
    );
  });

  it('gives a white the luminance 1, and a grey its share of that', () => {
    const because = 'sums of 81 numbers';
    expect(tristimulus(() => 1)[1]).toEqual(closeTo(1, { relative: 1e-14, because }));
    const [white, grey] = [tristimulus(() => 1), tristimulus(() => 0.18)];
    expect(grey).toEqual(white.map((value) => closeTo(0.18 * value, { relative: 1e-13, because })));
  });

  it('adds spectra up', () => {
    const [low, high] = [(l: number) => l * 500, (l: number) => 1 - l * 500];
    const both = tristimulus(low).map((value, index) => value + tristimulus(high)[index]!);
    expect(both).toEqual(
      tristimulus(() => 1).map((value) => closeTo(value, { relative: 1e-13, because: 'sums of 81 numbers' })),
    );
  });

  it('refuses a light that is none, by the value that is wrong', () => {
    const changed = (value: number) => daylight.map((light, row) => (row === 7 ? value : light));
    expect(() => tristimulus(() => 1, daylight.slice(1))).toThrow(/has 80 values; accepted: 81/);
    for (const value of [NaN, -1, Infinity])
      expect(() => tristimulus(() => 1, changed(value))).toThrow(/value 7 of the/);
    expect(() =>
      tristimulus(
        () => 1,
        daylight.map(() => 0),
      ),
    ).toThrow(/dark/);
    for (const parts of [0, 1.5, NaN]) expect(() => tristimulus(() => 1, daylight, parts)).toThrow(/number of parts/);
  });

  it('refuses a spectrum that is not a share at some wavelength', () => {
    for (const odd of [NaN, -0.1, Infinity]) {
      const spectrum = (wavelength: number) => (wavelength > 0.0006 ? odd : 0.5);
      expect(() => tristimulus(spectrum)).toThrow(OutOfRange);
      expect(() => tristimulus(spectrum)).toThrow(/reflectance is/);
    }
  });

  it('sees equal energy as white of equal parts', () => {
    const [x, , z] = tristimulus(() => 1, equalEnergy);
    expect(x).toEqual(closeTo(1, { absolute: 1e-4, because: 'the observer was made so, to rounding of its tables' }));
    expect(z).toEqual(closeTo(1, { absolute: 1e-4, because: 'the observer was made so, to rounding of its tables' }));
  });

  it('changes little for a smooth spectrum when its steps are split', () => {
    const smooth = (wavelength: number) => 0.5 + 0.5 * Math.sin(wavelength * 20000);
    const because = 'tables that run straight between rows, a spectrum that does not';
    expect(tristimulus(smooth, daylight, 4)).toEqual(
      tristimulus(smooth).map((value) => closeTo(value, { absolute: 5e-4, because })),
    );
  });
});
