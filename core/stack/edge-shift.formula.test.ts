import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { edgeShift } from './edge-shift.formula.ts';

/** A 36 mm sensor of 6 µm pixels. */
const frame = { scaleChange: 0.001, sensorWidth: 36, pixelPitch: 0.006 };

describe('edgeShift', () => {
  it('is three pixels for a thousandth on 36 mm and 6 µm', () => {
    expect(edgeShift(frame)).toEqual(closeTo(3, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('doubles with half the pitch', () => {
    expect(edgeShift({ ...frame, pixelPitch: 0.003 })).toEqual(
      closeTo(6, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is nothing where nothing changes', () => {
    expect(edgeShift({ ...frame, scaleChange: 0 })).toBe(0);
  });

  it('refuses a change below zero by name', () => {
    expect(() => edgeShift({ ...frame, scaleChange: -0.001 })).toThrow(OutOfRange);
    expect(() => edgeShift({ ...frame, scaleChange: -0.001 })).toThrow(/scale-change is -0.001/);
  });
});
