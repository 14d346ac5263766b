import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { angleOfView } from './angle-of-view.formula.ts';
import { entrancePupilDistance } from './entrance-pupil-distance.formula.ts';
import { fieldWidth } from './field-width.formula.ts';

const lens = { sensorWidth: 36, focalLength: 50, magnification: 0, pupilMagnification: 0.7 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('angleOfView', () => {
  it('is a right angle for 18 mm on 36 mm of sensor, far away', () => {
    expect(angleOfView({ ...lens, focalLength: 18 })).toBe(Math.PI / 2);
  });

  it('is the angle under which the field stands before the entrance pupil', () => {
    const near = { ...lens, magnification: 0.8 };
    const half = Math.atan(fieldWidth(near) / 2 / entrancePupilDistance(near));
    expect(angleOfView(near)).toEqual(closeTo(2 * half, rounding));
  });

  it('halves its tangent at life size with equal pupils, and tends to nothing beyond', () => {
    const at = (magnification: number) => Math.tan(angleOfView({ ...lens, pupilMagnification: 1, magnification }) / 2);
    expect(at(1)).toEqual(closeTo(at(0) / 2, rounding));
    expect(angleOfView({ ...lens, magnification: 1e9 })).toBeLessThan(1e-9);
  });

  it('refuses a negative magnification and a focal length of zero by name', () => {
    expect(() => angleOfView({ ...lens, magnification: -1 })).toThrow(/magnification is -1/);
    expect(() => angleOfView({ ...lens, focalLength: 0 })).toThrow(OutOfRange);
  });
});
