import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import {
  agreedReflectance,
  domeReceptorConstants,
  flatReceptorConstants,
  reflectedLightConstants,
} from './metering-constants.ts';

describe('metering constants', () => {
  it('hold a common value within the range that is left to makers', () => {
    for (const { least, common, most } of [reflectedLightConstants, flatReceptorConstants, domeReceptorConstants]) {
      expect(least).toBeLessThan(common);
      expect(common).toBeLessThan(most);
    }
  });

  it('make a pointed and a held meter agree on a mid grey', () => {
    expect(agreedReflectance(reflectedLightConstants.common, flatReceptorConstants.common)).toEqual(
      closeTo(Math.PI / 20, { relative: 1e-15, because: 'one rounding' }),
    );
    expect(() => agreedReflectance(12.5, 0)).toThrow(/incident-light-constant is 0/);
    expect(() => agreedReflectance(NaN, 250)).toThrow(/reflected-light-constant is NaN/);
  });
});
