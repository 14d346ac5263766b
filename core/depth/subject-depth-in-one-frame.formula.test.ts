import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfFieldCloseUp } from './depth-of-field-close-up.formula.ts';
import { subjectDepthInOneFrame } from './subject-depth-in-one-frame.formula.ts';

const wing = { circleOfConfusion: 0.02, wavelength: 0.0005, magnification: 0.5 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('subjectDepthInOneFrame', () => {
  it('is 3.2 mm at half life size for 0.02 mm', () => {
    expect(subjectDepthInOneFrame(wing)).toEqual(closeTo(3.2, rounding));
  });

  it('is the same for every camera that is filled by the subject, with c a part of its width', () => {
    const on = (sensorWidth: number) =>
      subjectDepthInOneFrame({ ...wing, circleOfConfusion: sensorWidth / 1800, magnification: sensorWidth / 60 });
    expect(on(23.5)).toEqual(closeTo(on(36), rounding));
  });

  it('is less than geometry alone would hold at that opening, by √2', () => {
    const effectiveFNumber = wing.circleOfConfusion / (Math.SQRT2 * wing.wavelength);
    const byGeometry = depthOfFieldCloseUp({ ...wing, effectiveFNumber });
    expect(byGeometry / subjectDepthInOneFrame(wing)).toEqual(closeTo(Math.SQRT2, rounding));
  });

  it('grows without end towards no magnification, and refuses none by name', () => {
    expect(subjectDepthInOneFrame({ ...wing, magnification: 1e-6 })).toBeGreaterThan(1e9);
    expect(() => subjectDepthInOneFrame({ ...wing, magnification: 0 })).toThrow(OutOfRange);
    expect(() => subjectDepthInOneFrame({ ...wing, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
