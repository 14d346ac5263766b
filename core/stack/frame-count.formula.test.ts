import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { frameCount } from './frame-count.formula.ts';

/** Five millimetres of beetle in slices of half a millimetre that share a quarter. */
const beetle = { subjectDepth: 5, depthOfField: 0.5, overlap: 0.25 };

describe('frameCount', () => {
  it('is 13 for 5 mm in slices of half a millimetre that share a quarter', () => {
    expect(frameCount(beetle)).toBe(13);
  });

  it('is 1 where one frame covers the subject', () => {
    expect(frameCount({ ...beetle, subjectDepth: 0.5 })).toBe(1);
    expect(frameCount({ ...beetle, subjectDepth: 0.1 })).toBe(1);
    expect(frameCount({ ...beetle, subjectDepth: 0.501 })).toBe(2);
  });

  it('is not raised by rounding: ten slices of a tenth make one', () => {
    expect(frameCount({ subjectDepth: 1, depthOfField: 0.1, overlap: 0 })).toBe(10);
  });

  it('tends to Z over the step for a deep subject', () => {
    expect(frameCount({ ...beetle, subjectDepth: 1e6 }) * 0.375).toEqual(
      closeTo(1e6, { relative: 1e-6, because: 'a frame more or less among millions' }),
    );
  });

  it('refuses an infinite depth by name, the subject’s and the frame’s', () => {
    expect(() => frameCount({ ...beetle, subjectDepth: Infinity })).toThrow(/subject-depth is Infinity/);
    expect(() => frameCount({ ...beetle, depthOfField: Infinity })).toThrow(/depth-of-field is Infinity/);
  });

  it('refuses an overlap of 1 by name', () => {
    expect(() => frameCount({ ...beetle, overlap: 1 })).toThrow(OutOfRange);
    expect(() => frameCount({ ...beetle, overlap: 1 })).toThrow(/overlap is 1/);
  });
});
