import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { stackTime } from './stack-time.formula.ts';

/** Thirteen frames of half a second, two seconds to settle. */
const stack = { frameCount: 13, exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 };

describe('stackTime', () => {
  it('is 30.5 s for thirteen frames of half a second with two seconds to settle', () => {
    expect(stackTime(stack)).toBe(30.5);
  });

  it('counts the longer wait alone', () => {
    expect(stackTime({ ...stack, recyclingTime: 3 })).toBe(42.5);
    expect(stackTime({ ...stack, recyclingTime: 2 })).toBe(30.5);
  });

  it('is the exposure for one frame, and for no waits the exposures together', () => {
    expect(stackTime({ ...stack, frameCount: 1 })).toBe(0.5);
    expect(stackTime({ ...stack, settlingTime: 0, recyclingTime: 0 })).toBe(6.5);
  });

  it('refuses a wait below zero by name', () => {
    expect(() => stackTime({ ...stack, settlingTime: -1 })).toThrow(OutOfRange);
    expect(() => stackTime({ ...stack, settlingTime: -1 })).toThrow(/settling-time is -1/);
  });
});
