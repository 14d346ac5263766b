import { describe, expect, it } from 'vitest';
import { catchlightWidth } from '#core/light/catchlight-width.ts';
import { mirrorPoint } from '#core/light/mirror-point.ts';
import type { Direction } from '#core/picture/subjects/lamp.ts';
import { mirrored } from '#core/picture/subjects/shade.ts';
import { closeTo } from '#tests/support/close-to.ts';

/** How far from the axis, radians around a ball’s middle, the mirrored light is half as bright, on the way from *within* to *outside* it. */
function edge(light: Direction, size: number, within: number, outside: number): number {
  let [bright, dark] = [within, outside];
  for (let step = 0; step < 60; step++) {
    const angle = (bright + dark) / 2;
    if (mirrored([Math.sin(angle), 0, Math.cos(angle)], light, size, 1e-6) > 0.5) bright = angle;
    else dark = angle;
  }
  return bright;
}

const far = 1e7;
const bisected = { relative: 1e-5, because: 'a soft rim a millionth wide, and a light not quite at infinity' };

describe('the catchlight of a pictured eye', () => {
  it.each([0.1, 0.6, 1.2, 2.4])('is as wide as the exact reflection of a light that looks %s wide', (size) => {
    const width = 2 * Math.sin(edge([0, 0, 1], size, 0, Math.PI / 2));
    const sourceSize = 2 * far * Math.tan(size / 2);
    expect(width).toEqual(closeTo(catchlightWidth({ sourceSize, ballRadius: 1, flashDistance: far }), bisected));
  });

  it.each([0.3, 0.9, 1.5])('stands where the light’s middle is mirrored, %s off the axis', (apart) => {
    const light: Direction = [Math.sin(apart), 0, Math.cos(apart)];
    const [inner, outer] = [edge(light, 0.4, apart / 2, 0), edge(light, 0.4, apart / 2, Math.PI / 2)];
    const { angle } = mirrorPoint({ ballRadius: 1, lightDistance: far, cameraDistance: Infinity, apart });
    expect((inner + outer) / 2).toEqual(closeTo(angle, bisected));
  });
});
