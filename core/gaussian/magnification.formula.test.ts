import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnification } from './magnification.formula.ts';

describe('magnification', () => {
  it('is 1:2 for 24 mm of subject on 12 mm of sensor', () => {
    expect(magnification({ imageWidth: 12, subjectWidth: 24 })).toBe(0.5);
  });

  it('does not change when subject and image grow alike', () => {
    expect(magnification({ imageWidth: 36, subjectWidth: 72 })).toBe(
      magnification({ imageWidth: 12, subjectWidth: 24 }),
    );
  });

  it('is life size where the image is as large as the subject', () => {
    expect(magnification({ imageWidth: 7.3, subjectWidth: 7.3 })).toBe(1);
  });

  it('refuses a subject without width by name', () => {
    expect(() => magnification({ imageWidth: 12, subjectWidth: 0 })).toThrow(OutOfRange);
    expect(() => magnification({ imageWidth: 12, subjectWidth: 0 })).toThrow(/subject-width is 0/);
  });
});
