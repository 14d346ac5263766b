import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exactFNumber, exactShutterTime, fNumberSeries, shutterTimeSeries } from '#core/quantity/nominal.ts';
import {
  apertureValue,
  exposureTimeOfTimeValue,
  fNumberOfApertureValue,
  timeForLightLoss,
  timeValue,
} from './stops.ts';

const rounding = { relative: 1e-14, because: 'a logarithm and a power undo each other' };

describe('aperture and time values', () => {
  it('are whole numbers at whole stops', () => {
    expect([1, 2, 4, 8, 16].map(apertureValue)).toEqual([0, 2, 4, 6, 8]);
    expect([2, 1, 0.5, 1 / 128].map(timeValue)).toEqual([-1, -0, 1, 7]);
  });

  it('are thirds at every mark of the nominal series, whose exact values they give back', () => {
    for (const mark of fNumberSeries) {
      const exact = exactFNumber(mark)!;
      expect(3 * apertureValue(exact)).toEqual(
        closeTo(Math.round(3 * apertureValue(exact)), { absolute: 1e-12, because: 'rounding' }),
      );
      expect(fNumberOfApertureValue(apertureValue(exact))).toEqual(closeTo(exact, rounding));
    }
    for (const mark of shutterTimeSeries) {
      const exact = exactShutterTime(mark)!;
      expect(3 * timeValue(exact)).toEqual(
        closeTo(Math.round(3 * timeValue(exact)), { absolute: 1e-12, because: 'rounding' }),
      );
      expect(exposureTimeOfTimeValue(timeValue(exact))).toEqual(closeTo(exact, rounding));
    }
  });

  it('refuse an f-number or a time of zero, and stops that leave none', () => {
    expect(() => apertureValue(0)).toThrow(/f-number is 0/);
    expect(() => timeValue(0)).toThrow(/exposure-time is 0/);
    expect(() => fNumberOfApertureValue(1e5)).toThrow(OutOfRange);
    expect(() => exposureTimeOfTimeValue(NaN)).toThrow(OutOfRange);
  });
});

describe('timeForLightLoss', () => {
  it('is four times as long for two stops, and the same for none', () => {
    expect(timeForLightLoss({ exposureTime: 0.01, lightLoss: 2 })).toBe(0.04);
    expect(timeForLightLoss({ exposureTime: 0.01, lightLoss: 0 })).toBe(0.01);
  });

  it('refuses a loss without end', () => {
    expect(() => timeForLightLoss({ exposureTime: 0.01, lightLoss: Infinity })).toThrow(/light-loss is Infinity/);
    expect(() => timeForLightLoss({ exposureTime: 0.01, lightLoss: 5000 })).toThrow(OutOfRange);
  });
});
