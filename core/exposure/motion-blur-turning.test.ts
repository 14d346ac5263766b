import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { motionBlurTurningAboutPupil } from './motion-blur-turning-about-pupil.formula.ts';
import { motionBlurTurningAboutSensor } from './motion-blur-turning-about-sensor.formula.ts';
import { motionBlurTurning } from './motion-blur-turning.ts';

const held = { magnification: 0.7, shakeRate: 0.02, exposureTime: 0.05, stabilisation: 2 };
const lens = { ...held, focalLength: 90, principalSeparation: 12, pupilMagnification: 0.6 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('motionBlurTurning', () => {
  it('is the closed form about the sensor with the focus distance put in', () => {
    expect(motionBlurTurning({ ...held, distance: focusDistance(lens) })).toEqual(
      closeTo(motionBlurTurningAboutSensor(lens), rounding),
    );
  });

  it('is the closed form about the pupil with its distance put in', () => {
    expect(motionBlurTurning({ ...held, distance: entrancePupilDistance(lens) })).toEqual(
      closeTo(motionBlurTurningAboutPupil(lens), rounding),
    );
  });

  it('is nothing about the subject', () => {
    expect(motionBlurTurning({ ...held, distance: 0 })).toBe(0);
  });

  it('refuses a distance behind the subject by name', () => {
    expect(() => motionBlurTurning({ ...held, distance: -1 })).toThrow(OutOfRange);
    expect(() => motionBlurTurning({ ...held, distance: -1 })).toThrow(/subject-distance is -1/);
  });
});
