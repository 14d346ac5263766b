import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { stackTimeInTurn } from './stack-time-in-turn.formula.ts';
import { stackTime } from './stack-time.formula.ts';

/** Thirteen frames of half a second, two seconds to settle, one to recycle. */
const stack = { frameCount: 13, exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 };

describe('stackTimeInTurn', () => {
  it('is 42.5 s for thirteen frames of half a second with two waits of two seconds and one', () => {
    expect(stackTimeInTurn(stack)).toBe(42.5);
  });

  it('is longer than with waits together by the shorter wait after each frame but the last', () => {
    expect(stackTimeInTurn(stack) - stackTime(stack)).toBe(12 * 1);
  });

  it('is the same as together where there is one wait, and for a single frame', () => {
    expect(stackTimeInTurn({ ...stack, recyclingTime: 0 })).toBe(stackTime({ ...stack, recyclingTime: 0 }));
    expect(stackTimeInTurn({ ...stack, frameCount: 1 })).toBe(0.5);
  });

  it('refuses a wait below zero by name', () => {
    expect(() => stackTimeInTurn({ ...stack, recyclingTime: -1 })).toThrow(OutOfRange);
    expect(() => stackTimeInTurn({ ...stack, recyclingTime: -1 })).toThrow(/recycling-time is -1/);
  });
});
