import { describe, expect, it } from 'vitest';
import { effectiveFNumberForDepth } from '#core/depth/effective-f-number-for-depth.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { oneFrameOrStack } from './one-frame-or-stack.ts';

const seen = { magnification: 3, circleOfConfusion: 0.02, wavelength: 0.00055 };
/** A spider three times life size, at f/5.6. */
const spider = { ...seen, subjectDepth: 3, effectiveFNumber: 25.4, frameCount: 38, inTimeFrameCount: 40 };

describe('oneFrameOrStack', () => {
  it('is a stack where the depth is more than one frame can hold, and there is time', () => {
    expect(oneFrameOrStack(spider)).toBe('stack');
    expect(oneFrameOrStack({ ...spider, frameCount: 40 })).toBe('stack');
  });

  it('is too slow where the subject walks off before the last frame', () => {
    expect(oneFrameOrStack({ ...spider, inTimeFrameCount: 37 })).toBe('too-slow');
  });

  it('is one frame from the mark that the depth asks for on, however little time there is', () => {
    for (const subjectDepth of [0.01, 0.05, 0.08]) {
      const least = effectiveFNumberForDepth({ ...seen, subjectDepth });
      const shallow = { ...spider, subjectDepth, frameCount: 1, inTimeFrameCount: 0 };
      expect(oneFrameOrStack({ ...shallow, effectiveFNumber: least })).toBe('one-frame');
      expect(oneFrameOrStack({ ...shallow, effectiveFNumber: 1.01 * least })).toBe('one-frame');
      expect(oneFrameOrStack({ ...shallow, effectiveFNumber: 0.99 * least })).toBe('close-further');
    }
  });

  it('is one frame up to the other root, where diffraction alone leaves too little', () => {
    const flat = { ...spider, subjectDepth: 1e-6, frameCount: 1 };
    expect(oneFrameOrStack({ ...flat, effectiveFNumber: 36.3 })).toBe('one-frame');
    expect(oneFrameOrStack({ ...flat, effectiveFNumber: 36.4 })).toBe('open-up');
  });

  it('opens up first beyond where one frame holds most', () => {
    expect(oneFrameOrStack({ ...spider, effectiveFNumber: 25.8 })).toBe('open-up');
    expect(oneFrameOrStack({ ...spider, effectiveFNumber: 25.7 })).toBe('stack');
  });

  it('opens up where geometry promises in one frame what diffraction blurs', () => {
    expect(oneFrameOrStack({ ...spider, subjectDepth: 0.1, frameCount: 1 })).toBe('open-up');
  });

  it('refuses a subject without depth by name', () => {
    expect(() => oneFrameOrStack({ ...spider, subjectDepth: 0 })).toThrow(OutOfRange);
    expect(() => oneFrameOrStack({ ...spider, subjectDepth: 0 })).toThrow(/subject-depth is 0/);
  });
});
