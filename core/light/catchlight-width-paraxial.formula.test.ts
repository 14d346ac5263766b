import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { catchlightWidthParaxial } from './catchlight-width-paraxial.formula.ts';
import { catchlightWidth } from './catchlight-width.ts';

const lamp = { sourceSize: 100, ballRadius: 4, flashDistance: 98 };

describe('catchlightWidthParaxial', () => {
  it('is 2 mm for a light 100 mm wide, 98 mm before an eye of 4 mm radius', () => {
    expect(catchlightWidthParaxial(lamp)).toBe(2);
  });

  it('doubles with the width of the light', () => {
    expect(catchlightWidthParaxial({ ...lamp, sourceSize: 200 })).toBe(4);
  });

  it('tends to the width of the light where the ball is nearly flat', () => {
    const flat = catchlightWidthParaxial({ ...lamp, ballRadius: 1e9 });
    expect(flat).toEqual(closeTo(100, { relative: 2e-7, because: 'a plane mirror, but for 2 d/r' }));
  });

  it('refuses a ball of no radius by name', () => {
    expect(() => catchlightWidthParaxial({ ...lamp, ballRadius: 0 })).toThrow(/ball-radius is 0/);
    expect(() => catchlightWidthParaxial({ ...lamp, ballRadius: 0 })).toThrow(OutOfRange);
  });

  it.each([
    [19, 0.0104],
    [60, 0.1153],
    [90, 0.3065],
  ])('is too wide for a light that looks %s° wide from a small ball, by a share of %s', (degrees, share) => {
    const wide = { sourceSize: 200 * Math.tan((degrees * Math.PI) / 360), ballRadius: 0.01, flashDistance: 100 };
    const excess = catchlightWidthParaxial(wide) / catchlightWidth(wide) - 1;
    expect(excess).toEqual(closeTo(share, { absolute: 0.0001, because: 'printed to four decimals' }));
  });
});
