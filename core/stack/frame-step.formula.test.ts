import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { frameStep } from './frame-step.formula.ts';

/** Slices of half a millimetre that share a quarter. */
const slices = { depthOfField: 0.5, overlap: 0.25 };

describe('frameStep', () => {
  it('is 0.375 mm for half a millimetre and a quarter of overlap', () => {
    expect(frameStep(slices)).toBe(0.375);
  });

  it('goes as the depth of field', () => {
    expect(frameStep({ ...slices, depthOfField: 1 })).toBe(0.75);
  });

  it('is the depth of field itself without overlap, and more with gaps', () => {
    expect(frameStep({ ...slices, overlap: 0 })).toBe(0.5);
    expect(frameStep({ ...slices, overlap: -1 })).toBe(1);
  });

  it('refuses an infinite depth of field by name', () => {
    expect(() => frameStep({ ...slices, depthOfField: Infinity })).toThrow(/depth-of-field is Infinity/);
  });

  it('refuses an overlap of 1 by name', () => {
    expect(() => frameStep({ ...slices, overlap: 1 })).toThrow(OutOfRange);
    expect(() => frameStep({ ...slices, overlap: 1 })).toThrow(/overlap is 1/);
  });
});
