import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { illuminanceByInverseSquare } from './illuminance-by-inverse-square.formula.ts';
import { lightingDifference } from './lighting-difference.formula.ts';

describe('lightingDifference', () => {
  it('is two stops for 800 lx beside 200', () => {
    expect(lightingDifference({ mainLightIlluminance: 800, fillLightIlluminance: 200 })).toBe(2);
  });

  it('changes its sign with the lights', () => {
    const one = lightingDifference({ mainLightIlluminance: 700, fillLightIlluminance: 90 });
    const other = lightingDifference({ mainLightIlluminance: 90, fillLightIlluminance: 700 });
    expect(one).toEqual(closeTo(-other, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is two stops for the same lamp twice as far away, by the inverse square law', () => {
    const lit = (flashDistance: number) =>
      illuminanceByInverseSquare({ luminance: 1e4, sourceSize: 20, flashDistance });
    const stops = lightingDifference({ mainLightIlluminance: lit(500), fillLightIlluminance: lit(1000) });
    expect(stops).toEqual(closeTo(2, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is nothing between equals, and refuses darkness by name', () => {
    expect(lightingDifference({ mainLightIlluminance: 5, fillLightIlluminance: 5 })).toBe(0);
    const dark = () => lightingDifference({ mainLightIlluminance: 5, fillLightIlluminance: 0 });
    expect(dark).toThrow(OutOfRange);
    expect(dark).toThrow(/fill-light.illuminance is 0/);
  });
});
