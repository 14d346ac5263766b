import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { fieldWidth } from './field-width.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationFromField } from './magnification-from-field.formula.ts';

describe('magnificationFromField', () => {
  it('is 1.5 where 24 mm of ruler span a 36 mm sensor', () => {
    expect(magnificationFromField({ sensorWidth: 36, fieldWidth: 24 })).toBe(1.5);
  });

  it('gives back the magnification that the field was computed from', () => {
    const seen = fieldWidth({ sensorWidth: 23.5, magnification: 0.3 });
    expect(magnificationFromField({ sensorWidth: 23.5, fieldWidth: seen })).toEqual(
      closeTo(0.3, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('is life size where the field is as wide as the sensor', () => {
    expect(magnificationFromField({ sensorWidth: 23.5, fieldWidth: 23.5 })).toBe(1);
  });

  it('refuses a field without width by name', () => {
    expect(() => magnificationFromField({ sensorWidth: 36, fieldWidth: 0 })).toThrow(OutOfRange);
    expect(() => magnificationFromField({ sensorWidth: 36, fieldWidth: 0 })).toThrow(/field-width is 0/);
  });
});
