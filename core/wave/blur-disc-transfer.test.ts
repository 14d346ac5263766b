import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { firstDarkRing } from './airy-diameter.formula.ts';
import { blurDiscTransfer } from './blur-disc-transfer.ts';

describe('blurDiscTransfer', () => {
  it('is 72 % for a blur of half a line pair', () => {
    const half = blurDiscTransfer({ defocusBlur: 0.02, spatialFrequency: 25 });
    expect(half).toEqual(closeTo(0.7217, { absolute: 5e-5, because: 'four figures' }));
  });

  it('depends on the product of blur and frequency alone', () => {
    const one = blurDiscTransfer({ defocusBlur: 0.04, spatialFrequency: 20 });
    expect(blurDiscTransfer({ defocusBlur: 0.02, spatialFrequency: 40 })).toBe(one);
  });

  it('first loses a pattern whose line pair goes 1.22 times into the blur, and reverses the next finer ones', () => {
    const lost = blurDiscTransfer({ defocusBlur: 0.01 * firstDarkRing, spatialFrequency: 100 });
    expect(lost).toEqual(closeTo(0, { absolute: 1e-15, because: 'rounding at a zero' }));
    expect(blurDiscTransfer({ defocusBlur: 0.015, spatialFrequency: 100 })).toBeLessThan(-0.1);
  });

  it('is whole for no blur, and nothing in the limit of a large one', () => {
    expect(blurDiscTransfer({ defocusBlur: 0, spatialFrequency: 100 })).toBe(1);
    expect(Math.abs(blurDiscTransfer({ defocusBlur: 100, spatialFrequency: 100 }))).toBeLessThan(1e-6);
  });

  it('refuses a blur below zero and one without bounds by name', () => {
    expect(() => blurDiscTransfer({ defocusBlur: -1, spatialFrequency: 1 })).toThrow(/defocus-blur is -1/);
    expect(() => blurDiscTransfer({ defocusBlur: 1e200, spatialFrequency: 1e200 })).toThrow(OutOfRange);
  });
});
