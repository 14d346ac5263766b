import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumberOfReversedLens } from './effective-f-number-of-reversed-lens.formula.ts';

const example = { fNumber: 8, magnification: 2, pupilMagnification: 1.6 };

describe('effectiveFNumberOfReversedLens', () => {
  it('is f/21 for a retrofocus lens marked f/8 at twice life size', () => {
    expect(effectiveFNumberOfReversedLens(example)).toBe(21);
  });

  it('is what the lens has the right way round at 1/m, times m', () => {
    expect(effectiveFNumberOfReversedLens(example)).toBe(2 * 8 * (1 + 1 / (2 * 1.6)));
  });

  it('tends to N/P as the subject goes away, which is 1.5 stops from N at P = 0.6', () => {
    const far = effectiveFNumberOfReversedLens({ ...example, magnification: 1e-12, pupilMagnification: 0.6 });
    expect(far).toEqual(closeTo(8 / 0.6, { relative: 1e-11, because: 'm is 1e-12' }));
    expect(2 * Math.log2(far / 8)).toEqual(closeTo(1.47, { absolute: 0.005, because: 'stated to two decimals' }));
  });

  it('refuses a pupil magnification of zero by name', () => {
    expect(() => effectiveFNumberOfReversedLens({ ...example, pupilMagnification: 0 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberOfReversedLens({ ...example, pupilMagnification: 0 })).toThrow(
      /pupil-magnification is 0/,
    );
  });
});
