import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { angleOfViewFar } from './angle-of-view-far.formula.ts';
import { angleOfView } from './angle-of-view.formula.ts';

describe('angleOfViewFar', () => {
  it('is a right angle where the lens is half as long as the sensor is wide', () => {
    const rightAngle = closeTo(Math.PI / 2, { relative: 1e-15, because: 'one rounding' });
    expect(angleOfViewFar({ sensorWidth: 36, focalLength: 18 })).toEqual(rightAngle);
  });

  it('is what is seen at magnification 0, whatever the pupils', () => {
    const lens = { sensorWidth: 23.5, focalLength: 55 };
    expect(angleOfViewFar(lens)).toBe(angleOfView({ ...lens, magnification: 0, pupilMagnification: 1.2 }));
  });

  it('comes to sensor over focal length as the lens gets long', () => {
    const ratio = angleOfViewFar({ sensorWidth: 36, focalLength: 36e4 }) / 1e-4;
    expect(ratio).toEqual(closeTo(1, { relative: 1e-8, because: 'the cube of half the angle is 1e-13' }));
  });

  it('refuses a focal length of zero by name', () => {
    const refused = () => angleOfViewFar({ sensorWidth: 36, focalLength: 0 });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(/focal-length is 0/);
  });
});
