import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { focusDistance } from './focus-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { closeFocusFocalLength } from './close-focus-focal-length.formula.ts';

const lens = { focusDistance: 290, magnification: 1 };

describe('closeFocusFocalLength', () => {
  it('is 72.5 mm for a lens that reaches life size 0.29 m from the sensor', () => {
    expect(closeFocusFocalLength({ ...lens, principalSeparation: 0 })).toBe(72.5);
  });

  it('changes by 2.5 mm at life size for 10 mm between the principal planes', () => {
    expect(closeFocusFocalLength({ ...lens, principalSeparation: 10 })).toBe(70);
  });

  it('is what gives that focus distance back', () => {
    const found = { magnification: 0.4, principalSeparation: -7 };
    const focalLength = closeFocusFocalLength({ ...found, focusDistance: 310 });
    expect(focusDistance({ ...found, focalLength })).toEqual(
      closeTo(310, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('tends to m times the focus distance as the subject goes away', () => {
    const far = closeFocusFocalLength({ focusDistance: 1e9, magnification: 5e-8, principalSeparation: 0 });
    expect(far).toEqual(closeTo(50, { relative: 2e-7, because: 'the limit is approached as 2 m' }));
  });

  it('refuses a separation that leaves nothing of the focus distance', () => {
    expect(() => closeFocusFocalLength({ ...lens, principalSeparation: 290 })).toThrow(OutOfRange);
    expect(() => closeFocusFocalLength({ ...lens, principalSeparation: 290 })).toThrow(/principal-separation is 290/);
  });
});
