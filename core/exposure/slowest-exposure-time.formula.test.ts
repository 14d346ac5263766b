import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { motionBlurOfSubject } from './motion-blur-of-subject.formula.ts';
import { motionBlurSideways } from './motion-blur-sideways.formula.ts';
import { motionBlurTurningAboutSensor } from './motion-blur-turning-about-sensor.formula.ts';
import { slowestExposureTime } from './slowest-exposure-time.formula.ts';

/** In one second turning draws 4 mm and sway 3 mm, which is 5 mm together. */
const held = {
  circleOfConfusion: 0.02,
  focalLength: 100,
  magnification: 1,
  principalSeparation: 0,
  shakeRate: 0.01,
  stabilisation: 0,
  sidewaysSpeed: 3,
  subjectSpeed: 0,
};

describe('slowestExposureTime', () => {
  it('is 1/250 s for 20 µm where 4 mm and 3 mm a second meet', () => {
    expect(slowestExposureTime(held)).toEqual(closeTo(0.004, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('leaves a streak of the circle of confusion in all', () => {
    const moving = { ...held, subjectSpeed: 7, principalSeparation: 20, stabilisation: 2, exposureTime: 1 };
    const at = { ...moving, exposureTime: slowestExposureTime(moving) };
    const streaks = [motionBlurTurningAboutSensor(at), motionBlurSideways(at), motionBlurOfSubject(at)];
    expect(Math.hypot(...streaks)).toEqual(closeTo(0.02, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('gains nothing from stabilisation once the subject’s own movement rules', () => {
    const running = { ...held, subjectSpeed: 1000 };
    expect(slowestExposureTime({ ...running, stabilisation: 8 })).toEqual(
      closeTo(slowestExposureTime(running), { relative: 1e-5, because: 'turning is 4 mm a second beside 1000' }),
    );
  });

  it('tends to the time of the movements that are left as stabilisation grows', () => {
    expect(slowestExposureTime({ ...held, stabilisation: 40 })).toEqual(
      closeTo(0.02 / 3, { relative: 1e-12, because: 'what is left of turning is 1e-12 of it' }),
    );
  });

  it('is that of the subject alone on a tripod', () => {
    const onTripod = { ...held, shakeRate: 0, sidewaysSpeed: 0, subjectSpeed: 4 };
    expect(slowestExposureTime(onTripod)).toEqual(closeTo(0.02 / 4, { relative: 1e-12, because: 'rounding' }));
    expect(() => slowestExposureTime({ ...onTripod, subjectSpeed: 0 })).toThrow(OutOfRange);
  });

  it('refuses a camera and a subject of which nothing moves', () => {
    expect(() => slowestExposureTime({ ...held, sidewaysSpeed: 0, stabilisation: 2000 })).toThrow(OutOfRange);
    expect(() => slowestExposureTime({ ...held, sidewaysSpeed: 0, stabilisation: 2000 })).toThrow(
      /stabilisation is 2000/,
    );
  });
});
