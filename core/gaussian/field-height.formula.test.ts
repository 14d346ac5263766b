import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { fieldHeight } from './field-height.formula.ts';

describe('fieldHeight', () => {
  it('is 48 mm for a 24 mm side at half life size', () => {
    expect(fieldHeight({ sensorHeight: 24, magnification: 0.5 })).toBe(48);
  });

  it('halves when the magnification doubles', () => {
    const field = fieldHeight({ sensorHeight: 24, magnification: 0.7 });
    expect(fieldHeight({ sensorHeight: 24, magnification: 1.4 })).toBe(field / 2);
  });

  it('is the sensor itself at life size', () => {
    expect(fieldHeight({ sensorHeight: 24, magnification: 1 })).toBe(24);
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => fieldHeight({ sensorHeight: 24, magnification: 0 })).toThrow(OutOfRange);
    expect(() => fieldHeight({ sensorHeight: -1, magnification: 1 })).toThrow(/sensor-height is -1/);
  });
});
