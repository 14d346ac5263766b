import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { cropFactor } from '#core/gaussian/crop-factor.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { circleOfConfusionByDiagonal } from './circle-of-confusion-by-diagonal.formula.ts';

describe('circleOfConfusionByDiagonal', () => {
  it('is 0.029 mm for 36 × 24 mm', () => {
    expect(circleOfConfusionByDiagonal({ sensorWidth: 36, sensorHeight: 24 })).toEqual(
      closeTo(0.029, { absolute: 0.0005, because: 'common practice prints two figures' }),
    );
  });

  it('shrinks with the crop factor', () => {
    const small = { sensorWidth: 23.5, sensorHeight: 15.6 };
    const whole = circleOfConfusionByDiagonal({ sensorWidth: 36, sensorHeight: 24 });
    expect(circleOfConfusionByDiagonal(small)).toEqual(
      closeTo(whole / cropFactor(small), { relative: 1e-15, because: 'a few roundings' }),
    );
  });

  it('tends to a share of the width for a sensor that is a line', () => {
    expect(circleOfConfusionByDiagonal({ sensorWidth: 30, sensorHeight: 1e-9 })).toBe(0.02);
  });

  it('refuses a sensor without width by name', () => {
    expect(() => circleOfConfusionByDiagonal({ sensorWidth: 0, sensorHeight: 24 })).toThrow(OutOfRange);
    expect(() => circleOfConfusionByDiagonal({ sensorWidth: 0, sensorHeight: 24 })).toThrow(/sensor-width is 0/);
  });
});
