import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { fieldWidth } from './field-width.formula.ts';
import { frameFill } from './frame-fill.formula.ts';

const rounding = { relative: 1e-14, because: 'a few roundings' };
const stamp = { magnification: 1.2, subjectWidth: 30, sensorWidth: 36 };

describe('frameFill', () => {
  it('is all of the frame for a stamp 30 mm wide at 1.2×', () => {
    expect(frameFill(stamp)).toEqual(closeTo(1, rounding));
  });

  it('is the subject’s share of the field', () => {
    for (const magnification of [0.1, 0.6, 3]) {
      const given = { ...stamp, magnification };
      expect(frameFill(given)).toEqual(closeTo(stamp.subjectWidth / fieldWidth(given), rounding));
    }
  });

  it('goes to nothing with the magnification, and beyond all of it for what does not fit in', () => {
    expect(frameFill({ ...stamp, magnification: 1e-9 })).toBeLessThan(1e-8);
    expect(frameFill({ ...stamp, magnification: 2 })).toBeGreaterThan(1);
  });

  it('refuses a subject without width by name', () => {
    expect(() => frameFill({ ...stamp, subjectWidth: 0 })).toThrow(OutOfRange);
    expect(() => frameFill({ ...stamp, subjectWidth: 0 })).toThrow(/subject-width is 0/);
  });
});
