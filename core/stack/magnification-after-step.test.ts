import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { magnificationAfterStep } from './magnification-after-step.ts';

const before = { focalLength: 100, magnification: 0.5, step: 0 };

describe('magnificationAfterStep', () => {
  it('goes from life size to half of it in 50 mm with 100 mm of focal length', () => {
    expect(magnificationAfterStep({ focalLength: 100, magnification: 1, step: 50 })).toEqual(
      closeTo(0.5, { relative: 1e-15, because: 'one rounding' }),
    );
  });

  it('moves the focus distance by the step, on either side of life size', () => {
    for (const magnification of [0.1, 0.7, 0.999, 1.001, 1.5, 4]) {
      const after = magnificationAfterStep({ ...before, magnification, step: 3 });
      const lens = { focalLength: 100, principalSeparation: 0 };
      const moved = focusDistance({ ...lens, magnification: after }) - focusDistance({ ...lens, magnification });
      expect(moved).toEqual(closeTo(3, { absolute: 1e-11, because: 'a difference of lengths near 500 mm' }));
      expect(Math.sign(after - 1)).toBe(Math.sign(magnification - 1));
    }
  });

  it('stays where it is for no step', () => {
    expect(magnificationAfterStep(before)).toEqual(closeTo(0.5, { relative: 1e-15, because: 'one rounding' }));
    expect(magnificationAfterStep({ ...before, magnification: 2 })).toBe(2);
  });

  it('reaches life size and refuses to go nearer, by name', () => {
    expect(magnificationAfterStep({ ...before, step: -50 })).toBe(1);
    expect(() => magnificationAfterStep({ ...before, step: -50.001 })).toThrow(OutOfRange);
    expect(() => magnificationAfterStep({ ...before, step: -50.001 })).toThrow(/frame-step is -50.001/);
    expect(() => magnificationAfterStep({ ...before, step: Infinity })).toThrow(/frame-step is Infinity/);
  });
});
