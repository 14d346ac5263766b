import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusDistance } from './focus-distance.formula.ts';
import { magnificationAtFocusDistance } from './magnification-at-focus-distance.formula.ts';

describe('magnificationAtFocusDistance', () => {
  it('is a half at 4.5 focal lengths', () => {
    const half = magnificationAtFocusDistance({ focalLength: 50, focusDistance: 225, principalSeparation: 0 });
    expect(half).toEqual(closeTo(0.5, { relative: 1e-15, because: 'a root and a quotient' }));
  });

  it('is what that focus distance was worked out from', () => {
    const lens = { focalLength: 28, principalSeparation: 16.47 };
    const back = magnificationAtFocusDistance({
      ...lens,
      focusDistance: focusDistance({ ...lens, magnification: 0.1 }),
    });
    expect(back).toEqual(closeTo(0.1, { relative: 1e-13, because: 'two roundings, enlarged by the root' }));
  });

  it('comes to focal length over distance far away', () => {
    const far = magnificationAtFocusDistance({ focalLength: 50, focusDistance: 5e8, principalSeparation: -4 });
    expect(far * 1e7).toEqual(
      closeTo(1, { relative: 3e-7, because: 'twice the focal length is 2e-7 of the distance' }),
    );
  });

  it('refuses a distance nearer than four focal lengths by name', () => {
    const refused = () => magnificationAtFocusDistance({ focalLength: 50, focusDistance: 199, principalSeparation: 0 });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(/focus-distance is 199/);
  });
});
