import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { correctedExposureTime } from './corrected-exposure-time.formula.ts';
import { timeForLightLoss } from './stops.ts';

const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('correctedExposureTime', () => {
  it('is four times as long where f/8 works as f/16', () => {
    expect(correctedExposureTime({ exposureTime: 0.01, effectiveFNumber: 16, fNumber: 8 })).toBe(0.04);
  });

  it('makes up for just the stops that are lost', () => {
    const lens = { effectiveFNumber: 19.3, fNumber: 5.6 };
    expect(correctedExposureTime({ exposureTime: 0.02, ...lens })).toEqual(
      closeTo(timeForLightLoss({ exposureTime: 0.02, lightLoss: lightLoss(lens) }), rounding),
    );
  });

  it('leaves the time alone far away', () => {
    expect(correctedExposureTime({ exposureTime: 1 / 60, effectiveFNumber: 8, fNumber: 8 })).toBe(1 / 60);
  });

  it('refuses a time of nothing by name', () => {
    const given = { exposureTime: 0, effectiveFNumber: 16, fNumber: 8 };
    expect(() => correctedExposureTime(given)).toThrow(OutOfRange);
    expect(() => correctedExposureTime(given)).toThrow(/exposure-time is 0/);
  });
});
