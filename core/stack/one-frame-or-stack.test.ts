import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { oneFrameOrStack } from './one-frame-or-stack.ts';

/** A spider three times life size, at f/8. */
const spider = { subjectDepth: 3, depthOfField: 0.16, effectiveFNumber: 36.2, frameCount: 25 };
const limits = { effectiveFNumber: 36.4, subjectDepth: 0.162, frameCount: 30 };

describe('oneFrameOrStack', () => {
  it('is a stack where the depth is more than one frame can hold, and there is time', () => {
    expect(oneFrameOrStack(spider, limits)).toBe('stack');
    expect(oneFrameOrStack({ ...spider, frameCount: 30 }, limits)).toBe('stack');
  });

  it('is too slow where the subject walks off before the last frame', () => {
    expect(oneFrameOrStack(spider, { ...limits, frameCount: 24 })).toBe('too-slow');
  });

  it('is one frame where that is deep enough, however little time there is', () => {
    expect(oneFrameOrStack({ ...spider, subjectDepth: 0.16 }, { ...limits, frameCount: 0 })).toBe('one-frame');
    expect(oneFrameOrStack({ ...spider, depthOfField: Infinity }, limits)).toBe('one-frame');
  });

  it('closes further where one frame would do so without losing the detail', () => {
    expect(oneFrameOrStack({ ...spider, subjectDepth: 0.161 }, limits)).toBe('close-further');
  });

  it('opens up first where the detail is gone at every depth', () => {
    expect(oneFrameOrStack({ ...spider, effectiveFNumber: 50 }, limits)).toBe('open-up');
    expect(oneFrameOrStack({ ...spider, effectiveFNumber: 36.4 }, limits)).toBe('stack');
  });

  it('refuses a subject without depth by name', () => {
    expect(() => oneFrameOrStack({ ...spider, subjectDepth: 0 }, limits)).toThrow(OutOfRange);
    expect(() => oneFrameOrStack({ ...spider, subjectDepth: 0 }, limits)).toThrow(/subject-depth is 0/);
  });
});
