import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { framesBeforeDeadline } from './frames-before-deadline.formula.ts';
import { stackTime } from './stack-time.formula.ts';

const pace = { exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 };

describe('framesBeforeDeadline', () => {
  it('is 4 in ten seconds, of half a second each with two to settle', () => {
    expect(framesBeforeDeadline({ ...pace, timeLimit: 10 })).toBe(4);
  });

  it('is the most frames whose stack takes no longer than the deadline', () => {
    for (const timeLimit of [0.5, 2.9, 3, 10, 61]) {
      const frameCount = framesBeforeDeadline({ ...pace, timeLimit });
      expect(stackTime({ ...pace, frameCount })).toBeLessThanOrEqual(timeLimit);
      expect(stackTime({ ...pace, frameCount: frameCount + 1 })).toBeGreaterThan(timeLimit);
    }
  });

  it('is none where not even one exposure fits', () => {
    expect(framesBeforeDeadline({ ...pace, timeLimit: 0.4 })).toBe(0);
  });

  it('refuses an exposure of no time by name', () => {
    expect(() => framesBeforeDeadline({ ...pace, timeLimit: 10, exposureTime: 0 })).toThrow(OutOfRange);
    expect(() => framesBeforeDeadline({ ...pace, timeLimit: 10, exposureTime: 0 })).toThrow(/exposure-time is 0/);
  });
});
