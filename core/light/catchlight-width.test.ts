import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { catchlightWidthParaxial } from './catchlight-width-paraxial.formula.ts';
import { catchlightWidth } from './catchlight-width.ts';

const softBox = { sourceSize: 300, ballRadius: 8, flashDistance: 100 };

describe('catchlightWidth', () => {
  it('is 7.44 mm where the short form has 11.54 mm: a soft box close to a large eye', () => {
    const [exact, short] = [catchlightWidth(softBox), catchlightWidthParaxial(softBox)];
    expect(exact).toEqual(closeTo(7.4373, { absolute: 5e-5, because: 'printed to five figures' }));
    expect(short).toEqual(closeTo(11.538, { absolute: 5e-4, because: 'printed to five figures' }));
  });

  it.each([
    [300, 8, 100],
    [20, 8, 100],
    [1000, 50, 30],
    [0.01, 4, 2],
  ])('solves its equation for a light %s mm wide, a ball of %s mm and %s mm between them', (size, r, d) => {
    const half = catchlightWidth({ sourceSize: size, ballRadius: r, flashDistance: d }) / 2;
    const p = Math.asin(half / r);
    const right = (d + r * (1 - Math.cos(p))) * Math.tan(2 * p);
    expect(size / 2 - half).toEqual(closeTo(right, { relative: 1e-12, because: 'found to the last digits' }));
  });

  it('doubles when everything doubles', () => {
    const doubled = catchlightWidth({ sourceSize: 600, ballRadius: 16, flashDistance: 200 });
    expect(doubled).toEqual(
      closeTo(2 * catchlightWidth(softBox), { relative: 1e-14, because: 'found to the last digits' }),
    );
  });

  it('comes to the short form for a small light, from below', () => {
    const small = { ...softBox, sourceSize: 0.1 };
    const share = catchlightWidth(small) / catchlightWidthParaxial(small);
    expect(share).toBeLessThan(1);
    expect(share).toEqual(closeTo(1, { relative: 1e-6, because: 'the next term is the square of half the angle' }));
  });

  it('stays within √2 r however large the light', () => {
    const endless = catchlightWidth({ ...softBox, sourceSize: 1e9 });
    expect(endless).toEqual(closeTo(Math.SQRT2 * 8, { relative: 1e-6, because: 'd over S_w is left' }));
    expect(endless).toBeLessThan(Math.SQRT2 * 8);
  });

  it('refuses a light at no distance', () => {
    expect(() => catchlightWidth({ ...softBox, flashDistance: 0 })).toThrow(OutOfRange);
    expect(() => catchlightWidth({ ...softBox, sourceSize: -1 })).toThrow(/source-size/);
  });
});
