import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { motionBlurTurningAboutSensor } from './motion-blur-turning-about-sensor.formula.ts';

/** A 100 mm lens at life size, turning by 0.01 rad/s for 1/100 s. */
const held = {
  focalLength: 100,
  magnification: 1,
  principalSeparation: 0,
  shakeRate: 0.01,
  exposureTime: 0.01,
  stabilisation: 0,
};

describe('motionBlurTurningAboutSensor', () => {
  it('is 40 µm for 100 mm at life size, 0.01 rad/s and 1/100 s', () => {
    expect(motionBlurTurningAboutSensor(held)).toEqual(closeTo(0.04, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is four times at life size what it is far away', () => {
    const far = motionBlurTurningAboutSensor({ ...held, magnification: 1e-9 });
    expect(motionBlurTurningAboutSensor(held) / far).toEqual(
      closeTo(4, { relative: 1e-8, because: 'the limit is approached as 2m' }),
    );
  });

  it('is f ω t far away, principal planes or not', () => {
    expect(motionBlurTurningAboutSensor({ ...held, magnification: 0, principalSeparation: -30 })).toBe(
      100 * 0.01 * 0.01,
    );
  });

  it('halves with each stop of stabilisation', () => {
    expect(motionBlurTurningAboutSensor({ ...held, stabilisation: 3 })).toEqual(
      closeTo(0.005, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is m L ω t, the principal planes’ distance included', () => {
    const apart = { ...held, magnification: 0.5, principalSeparation: 30 };
    expect(motionBlurTurningAboutSensor(apart)).toEqual(
      closeTo(0.5 * focusDistance(apart) * 1e-4, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses principal planes so far crossed over that the subject would lie behind the sensor', () => {
    expect(() => motionBlurTurningAboutSensor({ ...held, principalSeparation: -400 })).toThrow(
      /principal-separation is -400/,
    );
  });

  it('refuses a stabilisation below zero by name', () => {
    expect(() => motionBlurTurningAboutSensor({ ...held, stabilisation: -1 })).toThrow(OutOfRange);
    expect(() => motionBlurTurningAboutSensor({ ...held, stabilisation: -1 })).toThrow(/stabilisation is -1/);
  });
});
