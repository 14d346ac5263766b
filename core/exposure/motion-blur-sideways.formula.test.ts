import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { motionBlurSideways } from './motion-blur-sideways.formula.ts';

/** Life size, 5 mm/s, 1/100 s. */
const swaying = { magnification: 1, sidewaysSpeed: 5, exposureTime: 0.01 };

describe('motionBlurSideways', () => {
  it('is 50 µm at life size for 5 mm/s and 1/100 s', () => {
    expect(motionBlurSideways(swaying)).toEqual(closeTo(0.05, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('goes as the magnification', () => {
    expect(motionBlurSideways({ ...swaying, magnification: 0.1 })).toEqual(
      closeTo(0.005, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is nothing for a camera at rest', () => {
    expect(motionBlurSideways({ ...swaying, sidewaysSpeed: 0 })).toBe(0);
  });

  it('refuses a speed below zero by name', () => {
    expect(() => motionBlurSideways({ ...swaying, sidewaysSpeed: -5 })).toThrow(OutOfRange);
    expect(() => motionBlurSideways({ ...swaying, sidewaysSpeed: -5 })).toThrow(/sideways-speed is -5/);
  });
});
