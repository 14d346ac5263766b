import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { contrast } from './contrast.formula.ts';
import { opticalTransfer } from './optical-transfer.ts';

const halfWay = { spatialFrequency: 50, cutoffFrequency: 100 };
const perfect = { defocusAberration: 0, sphericalAberration: 0 };
const accuracy = { absolute: 1e-7, because: 'the accuracy that the docstring states' } as const;
const share = fc.double({ min: 0, max: 1, noNaN: true });
const pupil = fc.record({
  defocusAberration: fc.double({ min: -20, max: 20, noNaN: true }),
  sphericalAberration: fc.double({ min: -5, max: 5, noNaN: true }),
});

describe('opticalTransfer', () => {
  it('is −0.0683 a quarter of the way to the cutoff, one wave out of focus', () => {
    const transfer = opticalTransfer({ ...perfect, spatialFrequency: 25, cutoffFrequency: 100, defocusAberration: 1 });
    expect(transfer).toEqual(closeTo(-0.068308, { absolute: 1e-6, because: 'six decimals' }));
  });

  it('is the closed form for a perfect pupil', () => {
    fc.assert(
      fc.property(share, (s) => {
        const given = { spatialFrequency: s, cutoffFrequency: 1 };
        expect(opticalTransfer({ ...given, ...perfect })).toEqual(closeTo(contrast(given), accuracy));
      }),
    );
  });

  it('is one at zero frequency and never more in size than a perfect pupil’s', () => {
    fc.assert(
      fc.property(share, pupil, (s, aberrated) => {
        expect(opticalTransfer({ spatialFrequency: 0, cutoffFrequency: 1, ...aberrated })).toEqual(
          closeTo(1, accuracy),
        );
        const given = { spatialFrequency: s, cutoffFrequency: 1 };
        expect(Math.abs(opticalTransfer({ ...given, ...aberrated }))).toBeLessThanOrEqual(contrast(given) + 1e-7);
      }),
    );
  });

  it('does not change when both aberrations change sign', () => {
    fc.assert(
      fc.property(share, pupil, (s, { defocusAberration, sphericalAberration }) => {
        const given = { spatialFrequency: s, cutoffFrequency: 1 };
        const one = opticalTransfer({ ...given, defocusAberration, sphericalAberration });
        const other = opticalTransfer({
          ...given,
          defocusAberration: -defocusAberration,
          sphericalAberration: -sphericalAberration,
        });
        expect(other).toEqual(closeTo(one, { absolute: 1e-12, because: 'rounding' }));
      }),
    );
  });

  it('is nothing at the cutoff and beyond, whatever the pupil', () => {
    for (const spatialFrequency of [100, 1e6]) {
      expect(opticalTransfer({ ...perfect, cutoffFrequency: 100, spatialFrequency, defocusAberration: 3 })).toBe(0);
    }
  });

  it('refuses a frequency below zero and a defocus out of range by name', () => {
    expect(() => opticalTransfer({ ...halfWay, ...perfect, spatialFrequency: -1 })).toThrow(/spatial-frequency is -1/);
    expect(() => opticalTransfer({ ...halfWay, ...perfect, defocusAberration: 1e6 })).toThrow(OutOfRange);
  });
});
