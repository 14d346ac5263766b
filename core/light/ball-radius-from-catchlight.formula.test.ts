import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { ballRadiusFromCatchlight } from './ball-radius-from-catchlight.formula.ts';
import { catchlightWidthParaxial } from './catchlight-width-paraxial.formula.ts';

const seen = { sourceSize: 100, flashDistance: 98, catchlightWidthParaxial: 2 };

describe('ballRadiusFromCatchlight', () => {
  it('is 4 mm where a light 100 mm wide, 98 mm away, shows 2 mm wide', () => {
    expect(ballRadiusFromCatchlight(seen)).toBe(4);
  });

  it('gives back the radius from which the reflection was worked out', () => {
    const ball = { sourceSize: 61, flashDistance: 47, ballRadius: 3.3 };
    const width = catchlightWidthParaxial(ball);
    expect(ballRadiusFromCatchlight({ ...ball, catchlightWidthParaxial: width })).toEqual(
      closeTo(3.3, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('grows beyond bounds as the reflection comes to the width of the light: a flat mirror', () => {
    expect(ballRadiusFromCatchlight({ ...seen, catchlightWidthParaxial: 99.999 })).toBeGreaterThan(1e6);
  });

  it.each([100, 101, 0])('refuses a reflection %s mm wide of a light 100 mm wide', (width) => {
    expect(() => ballRadiusFromCatchlight({ ...seen, catchlightWidthParaxial: width })).toThrow(OutOfRange);
  });
});
