import { describe, expect, it } from 'vitest';
import { combinedMotionBlur } from './combined-motion-blur.ts';

describe('combinedMotionBlur', () => {
  it('is the long side of a right triangle for two streaks', () => {
    expect(combinedMotionBlur([3, 4])).toBe(5);
  });

  it('lies between the longest streak and the sum of all', () => {
    const streaks = [0.01, 0.02, 0.005];
    expect(combinedMotionBlur(streaks)).toBeGreaterThan(0.02);
    expect(combinedMotionBlur(streaks)).toBeLessThan(0.035);
  });

  it('is the streak itself for one, and nothing for none', () => {
    expect(combinedMotionBlur([0.02])).toBe(0.02);
    expect(combinedMotionBlur([])).toBe(0);
  });

  it('refuses a streak below zero by name', () => {
    expect(() => combinedMotionBlur([0.01, -0.01])).toThrow(/motion-blur is -0.01/);
  });
});
