import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { catchlightOutline } from './catchlight-outline.ts';
import { catchlightSides } from './catchlight-sides.ts';
import { catchlightWidth } from './catchlight-width.ts';
import { lightsAroundBall } from './lights-around-ball.ts';

const given = { sourceSize: 160, flashDistance: 60, ballRadius: 0.8, luminance: 1 };
const sides = (lightAngle: number, more = {}) => {
  const all = { ...given, ...more, lightAngle };
  return catchlightSides(lightsAroundBall(all, 'one')[0]!, all.ballRadius);
};

describe('the sides of a catchlight', () => {
  it('are as far apart as the exact width, for a light straight ahead', () => {
    const { left, right } = sides(0);
    expect(right - left).toEqual(closeTo(catchlightWidth(given), { relative: 1e-12, because: 'the same ray twice' }));
    expect(right).toEqual(closeTo(-left, { relative: 1e-12, because: 'both sides are alike' }));
  });

  it.each([
    [0.3, {}],
    [0.8, {}],
    [1.2, { ballRadius: 40 }],
    [Math.PI / 2, { sourceSize: 2000 }],
    [Math.PI / 2, { ballRadius: 300, sourceSize: 20 }],
  ])('are the outermost points of the whole outline, from %s rad with %o', (angle, more) => {
    const all = { ...given, ...more, lightAngle: angle };
    const outline = catchlightOutline(lightsAroundBall(all, 'one')[0]!, all.ballRadius, undefined, 2000);
    const across = outline.map(({ x }) => x);
    const { left, right } = sides(angle, more);
    const fine = { absolute: 1e-5 * all.ballRadius, because: 'two thousand points do not hit the outermost one' };
    expect(left).toEqual(closeTo(Math.min(...across), fine));
    expect(right).toEqual(closeTo(Math.max(...across), fine));
  });

  it('move towards the light, and the far one stays on the ball', () => {
    expect(sides(0.5).left).toBeLessThan(sides(0.2).left);
    expect(sides(Math.PI / 2, { sourceSize: 5000 }).left).toBeGreaterThanOrEqual(-0.8);
  });

  it('are refused for a ball that reaches to the light', () => {
    const [light] = lightsAroundBall({ ...given, lightAngle: 0 }, 'one');
    expect(() => catchlightSides(light!, 1000)).toThrow(OutOfRange);
  });
});
