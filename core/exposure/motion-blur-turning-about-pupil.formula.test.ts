import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { motionBlurTurningAboutSensor } from './motion-blur-turning-about-sensor.formula.ts';
import { motionBlurTurningAboutPupil } from './motion-blur-turning-about-pupil.formula.ts';

/** A 100 mm lens at life size, turning by 0.01 rad/s for 1/100 s. */
const held = {
  focalLength: 100,
  magnification: 1,
  pupilMagnification: 0.5,
  shakeRate: 0.01,
  exposureTime: 0.01,
  stabilisation: 0,
};

describe('motionBlurTurningAboutPupil', () => {
  it('is 30 µm for 100 mm and P = 0.5 at life size, 0.01 rad/s and 1/100 s', () => {
    expect(motionBlurTurningAboutPupil(held)).toEqual(closeTo(0.03, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is less than about the sensor only where P > 1/(2 + m)', () => {
    const about = (pupilMagnification: number) => motionBlurTurningAboutPupil({ ...held, pupilMagnification });
    const sensor = motionBlurTurningAboutSensor({ ...held, principalSeparation: 0 });
    expect(about(0.334)).toBeLessThan(sensor);
    expect(about(0.333)).toBeGreaterThan(sensor);
  });

  it('is f ω t far away, the rule of one over the focal length', () => {
    expect(motionBlurTurningAboutPupil({ ...held, magnification: 0 })).toBe(100 * 0.01 * 0.01);
    expect(motionBlurTurningAboutPupil({ ...held, magnification: 1e-12 })).toEqual(
      closeTo(0.01, { relative: 1e-11, because: 'the limit is approached as m/P' }),
    );
  });

  it('refuses a pupil magnification of zero by name', () => {
    expect(() => motionBlurTurningAboutPupil({ ...held, pupilMagnification: 0 })).toThrow(OutOfRange);
    expect(() => motionBlurTurningAboutPupil({ ...held, pupilMagnification: 0 })).toThrow(/pupil-magnification is 0/);
  });
});
