import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnification } from './magnification.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { imageWidth } from './image-width.formula.ts';

describe('imageWidth', () => {
  it('is 12 mm for 24 mm of subject at half life size', () => {
    expect(imageWidth({ magnification: 0.5, subjectWidth: 24 })).toBe(12);
  });

  it('has the magnification in it that went in', () => {
    expect(magnification({ imageWidth: imageWidth({ magnification: 1.4, subjectWidth: 9 }), subjectWidth: 9 })).toEqual(
      closeTo(1.4, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('is the width of the thing itself at life size', () => {
    expect(imageWidth({ magnification: 1, subjectWidth: 7.3 })).toBe(7.3);
  });

  it('refuses a magnification that is no number by name', () => {
    expect(() => imageWidth({ magnification: NaN, subjectWidth: 24 })).toThrow(OutOfRange);
    expect(() => imageWidth({ magnification: NaN, subjectWidth: 24 })).toThrow(/magnification is NaN/);
  });
});
