import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfStack } from './depth-of-stack.formula.ts';
import { frameCount } from './frame-count.formula.ts';

const spider = { depthOfField: 0.16, frameCount: 16, overlap: 0.25 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('depthOfStack', () => {
  it('is 1.96 mm for sixteen frames of 0.16 mm that share a quarter', () => {
    expect(depthOfStack(spider)).toEqual(closeTo(1.96, rounding));
  });

  it('is a depth that asks for that many frames', () => {
    for (const count of [1, 2, 7, 40])
      expect(frameCount({ ...spider, subjectDepth: depthOfStack({ ...spider, frameCount: count }) })).toBe(count);
  });

  it('is the depth of one frame where there is one', () => {
    expect(depthOfStack({ ...spider, frameCount: 1 })).toBe(0.16);
  });

  it('refuses no frame at all, and frames that share everything, by name', () => {
    expect(() => depthOfStack({ ...spider, frameCount: 0 })).toThrow(OutOfRange);
    expect(() => depthOfStack({ ...spider, frameCount: 0 })).toThrow(/frame-count is 0/);
    expect(() => depthOfStack({ ...spider, overlap: 1 })).toThrow(/overlap is 1/);
  });
});
