import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { swingDuring } from './swing.ts';
import { subjectSpeedOfSwing } from './subject-speed-of-swing.formula.ts';

/** A flower nods 10 mm to each side, twice a second. */
const flower = { swingAmplitude: 10, swingPeriod: 0.5 };

describe('subjectSpeedOfSwing', () => {
  it('is 126 mm/s for 10 mm twice a second', () => {
    expect(subjectSpeedOfSwing(flower)).toEqual(closeTo(40 * Math.PI, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('doubles with the amplitude, and with half the period', () => {
    expect(subjectSpeedOfSwing({ ...flower, swingAmplitude: 20 })).toEqual(
      closeTo(80 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
    expect(subjectSpeedOfSwing({ ...flower, swingPeriod: 0.25 })).toEqual(
      closeTo(80 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is what a short exposure sees as path over time', () => {
    expect(swingDuring({ ...flower, exposureTime: 1e-5 }) / 1e-5).toEqual(
      closeTo(subjectSpeedOfSwing(flower), { relative: 1e-8, because: 'sine and angle part by a sixth of the square' }),
    );
  });

  it('refuses a period of zero by name', () => {
    expect(() => subjectSpeedOfSwing({ ...flower, swingPeriod: 0 })).toThrow(OutOfRange);
    expect(() => subjectSpeedOfSwing({ ...flower, swingPeriod: 0 })).toThrow(/swing-period is 0/);
  });
});
