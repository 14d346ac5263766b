import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationAfterStep } from './magnification-after-step.ts';
import { scaleChangeFocusing } from './scale-change-focusing.formula.ts';

/** A symmetric 100 mm lens at half life size. */
const half = { frameStep: 0.3, magnification: 0.5, pupilMagnification: 1, focalLength: 100 };

describe('scaleChangeFocusing', () => {
  it('is a thousandth for 0.3 mm at half life size with a symmetric 100 mm lens', () => {
    expect(scaleChangeFocusing(half)).toEqual(closeTo(0.001, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is the change of m itself for a symmetric lens', () => {
    const after = magnificationAfterStep({ ...half, step: 1e-5 });
    expect(scaleChangeFocusing({ ...half, frameStep: 1e-5 })).toEqual(
      closeTo(0.5 - after, {
        relative: 1e-6,
        because: 'of first order in a step of 1e-7 focal lengths, and a difference of near numbers',
      }),
    );
  });

  it('grows without bounds towards life size, and is refused there', () => {
    expect(scaleChangeFocusing({ ...half, frameStep: 1e-12, magnification: 0.999999 })).toBeGreaterThan(4e-9);
    expect(() => scaleChangeFocusing({ ...half, magnification: 1 })).toThrow(/magnification is 1/);
  });

  it('holds beyond life size as well', () => {
    expect(scaleChangeFocusing({ ...half, magnification: 2 })).toEqual(
      closeTo(0.004, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses a step that would pass through life size by name', () => {
    expect(() => scaleChangeFocusing({ ...half, frameStep: 51 })).toThrow(OutOfRange);
    expect(() => scaleChangeFocusing({ ...half, frameStep: 51 })).toThrow(/frame-step is 51/);
  });
});
