import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { swingDuring } from './swing.ts';

const wing = { swingPeriod: 0.004, swingAmplitude: 4, exposureTime: 0.0004 };

describe('swingDuring', () => {
  it('is 2.47 mm in a tenth of a wingbeat of 4 mm to each side', () => {
    expect(swingDuring(wing)).toEqual(
      closeTo(8 * Math.sin(0.1 * Math.PI), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is the whole swing from half a period on, and no more', () => {
    for (const exposureTime of [0.002, 0.003, 1]) expect(swingDuring({ ...wing, exposureTime })).toBe(8);
  });

  it('is nothing in no time', () => {
    expect(swingDuring({ ...wing, exposureTime: 0 })).toBe(0);
  });

  it('is the longest of the paths between any two places that far apart in time', () => {
    const place = (time: number) => 4 * Math.sin((2 * Math.PI * time) / 0.004);
    const paths = Array.from({ length: 400 }, (_, step) => Math.abs(place(step * 1e-5 + 0.0004) - place(step * 1e-5)));
    expect(Math.max(...paths)).toEqual(
      closeTo(swingDuring(wing), { relative: 1e-4, because: 'places a hundredth of a period apart are tried' }),
    );
  });

  it('refuses a period of zero and a time below zero by name', () => {
    expect(() => swingDuring({ ...wing, swingPeriod: 0 })).toThrow(OutOfRange);
    expect(() => swingDuring({ ...wing, swingAmplitude: 0 })).toThrow(/swing-amplitude is 0/);
    expect(() => swingDuring({ ...wing, exposureTime: -1 })).toThrow(/exposure-time is -1/);
  });
});
