import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { framesInTime, framesLost } from './frames-in-time.ts';
import { stackTimeInTurn } from './stack-time-in-turn.formula.ts';
import { stackTime } from './stack-time.formula.ts';

const pace = { exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 };

describe('framesInTime', () => {
  it('is 4 in ten seconds, two and a half to the frame', () => {
    expect(framesInTime(pace, 10)).toBe(4);
  });

  it('is as many as the stack time of which still fits', () => {
    for (const timeLimit of [0.4, 0.5, 2.9, 3, 5.5, 8, 100.3]) {
      const frames = framesInTime(pace, timeLimit);
      if (frames > 0) expect(stackTime({ ...pace, frameCount: frames })).toBeLessThanOrEqual(timeLimit + 1e-9);
      expect(stackTime({ ...pace, frameCount: frames + 1 })).toBeGreaterThan(timeLimit);
    }
  });

  it('is fewer where one wait begins after the other, as many as their stack time allows', () => {
    const inTurn = { ...pace, waits: 'in turn' } as const;
    expect(framesInTime(inTurn, 10)).toBe(3);
    for (const frameCount of [2, 7, 40]) {
      expect(framesInTime(inTurn, stackTimeInTurn({ ...pace, frameCount }))).toBe(frameCount);
      expect(framesInTime(inTurn, stackTimeInTurn({ ...pace, frameCount }) - 0.01)).toBe(frameCount - 1);
    }
  });

  it('counts the frame that ends with the deadline', () => {
    expect(framesInTime({ exposureTime: 0.1, settlingTime: 0, recyclingTime: 0 }, 0.3)).toBe(3);
  });

  it('is none in no time', () => {
    expect(framesInTime({ ...pace, settlingTime: 0, recyclingTime: 0 }, 0)).toBe(0);
    expect(framesInTime(pace, 0)).toBe(0);
  });

  it('refuses a deadline without end and an exposure of zero, by name', () => {
    expect(() => framesInTime(pace, Infinity)).toThrow(/time-limit is Infinity/);
    expect(() => framesInTime({ ...pace, exposureTime: 0 }, 10)).toThrow(OutOfRange);
  });
});

describe('framesLost', () => {
  it('is what a stack has beyond the deadline', () => {
    expect(framesLost(pace, { frameCount: 13, timeLimit: 10 })).toBe(9);
    expect(framesLost(pace, { frameCount: 4, timeLimit: 10 })).toBe(0);
    expect(framesLost(pace, { frameCount: 3, timeLimit: 10 })).toBe(0);
  });

  it('refuses a stack without frames by name', () => {
    expect(() => framesLost(pace, { frameCount: 0, timeLimit: 10 })).toThrow(/frame-count is 0/);
    expect(() => framesLost(pace, { frameCount: 4.5, timeLimit: 10 })).toThrow(/frame-count is 4.5; accepted: a whole/);
  });
});
