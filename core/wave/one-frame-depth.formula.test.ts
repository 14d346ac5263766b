import { describe, expect, it } from 'vitest';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { finestEffectiveFNumber } from './finest-effective-f-number.formula.ts';
import { oneFrameDepth } from './one-frame-depth.formula.ts';

/** Three times life size, a fiftieth of a millimetre, green light. */
const close = { circleOfConfusion: 0.02, wavelength: 0.00055, magnification: 3 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('oneFrameDepth', () => {
  it('is 0.16 mm at three times life size', () => {
    expect(oneFrameDepth(close)).toEqual(closeTo(0.1616, { absolute: 5e-5, because: 'worked to four figures' }));
  });

  it('is the depth of field at the f-number of the rule', () => {
    for (const magnification of [0.1, 1, 5]) {
      const there = { ...close, magnification };
      expect(oneFrameDepth(there)).toEqual(
        closeTo(depthOfFieldCloseUp({ ...there, effectiveFNumber: finestEffectiveFNumber(there) }), rounding),
      );
    }
  });

  it('is a quarter at twice the size, and at half the circle', () => {
    expect(oneFrameDepth({ ...close, magnification: 6 })).toEqual(closeTo(oneFrameDepth(close) / 4, rounding));
    expect(oneFrameDepth({ ...close, circleOfConfusion: 0.01 })).toEqual(closeTo(oneFrameDepth(close) / 4, rounding));
  });

  it('refuses a magnification of nothing by name', () => {
    expect(() => oneFrameDepth({ ...close, magnification: 0 })).toThrow(OutOfRange);
    expect(() => oneFrameDepth({ ...close, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
