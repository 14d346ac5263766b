import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { contrast } from './contrast.formula.ts';

const half = { spatialFrequency: 50, cutoffFrequency: 100 };

describe('contrast', () => {
  it('is 39 % half-way to the cutoff', () => {
    // (2/π)(π/3 − √3/4), the two circles' overlap by hand.
    const byHand = (2 / Math.PI) * (Math.PI / 3 - Math.sqrt(3) / 4);
    expect(contrast(half)).toEqual(closeTo(byHand, { relative: 1e-14, because: 'rounding' }));
    expect(contrast(half)).toEqual(closeTo(0.391, { absolute: 5e-5, because: 'three figures' }));
  });

  it('depends on the two frequencies by their ratio alone', () => {
    expect(contrast({ spatialFrequency: 25, cutoffFrequency: 50 })).toBe(contrast(half));
  });

  it('is whole at zero frequency and leaves it along 1 − 4s/π', () => {
    expect(contrast({ ...half, spatialFrequency: 0 })).toBe(1);
    const start = contrast({ ...half, spatialFrequency: 1e-4 });
    expect(1 - start).toEqual(
      closeTo((4 / Math.PI) * 1e-6, { relative: 1e-9, because: 'the next term is smaller by s²' }),
    );
  });

  it('is nothing at the cutoff and beyond, which is an answer', () => {
    expect(contrast({ ...half, spatialFrequency: 100 })).toBe(0);
    expect(contrast({ ...half, spatialFrequency: 250 })).toBe(0);
  });

  it('lies from 0 to 1 and never rises with the frequency', () => {
    const share = fc.double({ min: 0, max: 1.2, noNaN: true });
    const at = (s: number) => contrast({ spatialFrequency: s, cutoffFrequency: 1 });
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [coarse, fine] = [at(Math.min(a, b)), at(Math.max(a, b))];
        expect(coarse).toBeLessThanOrEqual(1);
        expect(fine).toBeGreaterThanOrEqual(0);
        expect(fine).toBeLessThanOrEqual(coarse + 2e-16);
      }),
    );
  });

  it('refuses a frequency below zero and a cutoff of zero by name', () => {
    expect(() => contrast({ ...half, spatialFrequency: -1 })).toThrow(/spatial-frequency is -1/);
    expect(() => contrast({ ...half, cutoffFrequency: 0 })).toThrow(OutOfRange);
  });
});
