import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { imageWidth } from './image-width.formula.ts';
import { magnificationFromFrameFill } from './magnification-from-frame-fill.formula.ts';

/** A spider 6 mm wide over half of a picture. */
const spider = { frameFill: 0.5, sensorWidth: 36, subjectWidth: 6 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('magnificationFromFrameFill', () => {
  it('is three times life size for 6 mm over half of 36 mm', () => {
    expect(magnificationFromFrameFill(spider)).toBe(3);
  });

  it('makes an image as wide as that share of the sensor', () => {
    for (const frameFill of [0.05, 0.4, 1]) {
      const magnification = magnificationFromFrameFill({ ...spider, frameFill });
      expect(imageWidth({ ...spider, magnification })).toEqual(closeTo(frameFill * 36, rounding));
    }
  });

  it('is sensor over subject where the subject fills the picture', () => {
    expect(magnificationFromFrameFill({ frameFill: 1, sensorWidth: 36, subjectWidth: 36 })).toBe(1);
  });

  it('refuses a share of nothing, or of more than the picture, by name', () => {
    expect(() => magnificationFromFrameFill({ ...spider, frameFill: 0 })).toThrow(OutOfRange);
    expect(() => magnificationFromFrameFill({ ...spider, frameFill: 1.1 })).toThrow(/frame-fill is 1.1/);
    expect(() => magnificationFromFrameFill({ ...spider, subjectWidth: 0 })).toThrow(/subject-width is 0/);
  });
});
