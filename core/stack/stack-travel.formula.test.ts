import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { stackTravel } from './stack-travel.formula.ts';

/** Thirteen frames, 0.375 mm apart. */
const stack = { frameCount: 13, frameStep: 0.375 };

describe('stackTravel', () => {
  it('is 4.5 mm for thirteen frames 0.375 mm apart', () => {
    expect(stackTravel(stack)).toBe(4.5);
  });

  it('goes as the step', () => {
    expect(stackTravel({ ...stack, frameStep: 0.75 })).toBe(9);
  });

  it('is nothing for one frame', () => {
    expect(stackTravel({ ...stack, frameCount: 1 })).toBe(0);
  });

  it('refuses a stack without frames by name', () => {
    expect(() => stackTravel({ ...stack, frameCount: 0 })).toThrow(OutOfRange);
    expect(() => stackTravel({ ...stack, frameCount: 0 })).toThrow(/frame-count is 0/);
  });
});
