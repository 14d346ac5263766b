import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { colourSpreadAtSensor } from './colour-spread-at-sensor.formula.ts';

const example = { focalLength: 100, closeUpPower: 4, abbeNumber: 50 };

describe('colourSpreadAtSensor', () => {
  it('is 0.8 mm for four dioptres of V = 50 on 100 mm', () => {
    expect(colourSpreadAtSensor(example)).toBe(0.8);
  });

  it('grows fourfold when the focal length doubles', () => {
    expect(colourSpreadAtSensor({ ...example, focalLength: 200 })).toBe(3.2);
  });

  it('tends to nothing with the power', () => {
    expect(colourSpreadAtSensor({ ...example, closeUpPower: 1e-12 })).toEqual(
      closeTo(2e-13, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('refuses a focal length of zero by name', () => {
    expect(() => colourSpreadAtSensor({ ...example, focalLength: 0 })).toThrow(OutOfRange);
    expect(() => colourSpreadAtSensor({ ...example, focalLength: 0 })).toThrow(/focal-length is 0/);
  });
});
