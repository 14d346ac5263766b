import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { fieldWidth } from './field-width.formula.ts';

describe('fieldWidth', () => {
  it('is 72 mm for a 36 mm side at half life size', () => {
    expect(fieldWidth({ sensorWidth: 36, magnification: 0.5 })).toBe(72);
  });

  it('halves when the magnification doubles', () => {
    const field = fieldWidth({ sensorWidth: 36, magnification: 0.7 });
    expect(fieldWidth({ sensorWidth: 36, magnification: 1.4 })).toBe(field / 2);
  });

  it('is the sensor itself at life size', () => {
    expect(fieldWidth({ sensorWidth: 36, magnification: 1 })).toBe(36);
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => fieldWidth({ sensorWidth: 36, magnification: 0 })).toThrow(OutOfRange);
    expect(() => fieldWidth({ sensorWidth: -1, magnification: 1 })).toThrow(/sensor-width is -1/);
  });
});
