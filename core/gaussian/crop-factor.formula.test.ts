import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { cropFactor, referenceDiagonal } from './crop-factor.formula.ts';

describe('cropFactor', () => {
  it('is 1.53 for a sensor of 23.5 × 15.6 mm', () => {
    const factor = cropFactor({ sensorWidth: 23.5, sensorHeight: 15.6 });
    expect(factor).toEqual(closeTo(1.53, { absolute: 0.005, because: 'common practice prints two decimals' }));
  });

  it('doubles when the sensor shrinks to half its sides', () => {
    const whole = cropFactor({ sensorWidth: 30, sensorHeight: 20 });
    expect(cropFactor({ sensorWidth: 15, sensorHeight: 10 })).toEqual(
      closeTo(2 * whole, { relative: 1e-15, because: 'one rounding' }),
    );
  });

  it('is 1 for the frame it is counted from, 43.27 mm across', () => {
    expect(cropFactor({ sensorWidth: 36, sensorHeight: 24 })).toBe(1);
    expect(referenceDiagonal).toEqual(closeTo(43.27, { absolute: 0.005, because: 'stated to two decimals' }));
  });

  it('refuses a sensor without height by name', () => {
    expect(() => cropFactor({ sensorWidth: 36, sensorHeight: 0 })).toThrow(OutOfRange);
    expect(() => cropFactor({ sensorWidth: 36, sensorHeight: 0 })).toThrow(/sensor-height is 0/);
  });
});
