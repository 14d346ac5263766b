import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { catchlightOutline, catchlightPoint } from './catchlight-outline.ts';
import { catchlightWidth } from './catchlight-width.ts';
import type { FlatSource } from './flat-source.ts';

const ring: FlatSource = { shape: 'disc', sourceSize: 120, luminance: 1, centre: [0, 0, 84], facing: [0, 0, -1] };
const box: FlatSource = {
  shape: 'rectangle',
  sourceSize: 80,
  height: 40,
  luminance: 1,
  centre: [-60, 50, 60],
  facing: [60, -50, -60],
};
const rounding = { relative: 1e-13, because: 'found to the last digits' };

describe('catchlightOutline', () => {
  it('of a round light ahead is a circle as wide as catchlightWidth says', () => {
    const width = catchlightWidth({ sourceSize: 120, ballRadius: 4, flashDistance: 80 });
    const radii = catchlightOutline(ring, 4).map(({ x, y }) => Math.hypot(x, y));
    expect(radii).toHaveLength(64);
    for (const radius of radii) expect(radius).toEqual(closeTo(width / 2, rounding));
  });

  it('lies on the side of the light: left and up for a window at the upper left', () => {
    const outline = catchlightOutline(box, 4);
    expect(outline.every(({ x, y, seen }) => x < 0 && y > 0 && seen)).toBe(true);
  });

  it('bends the straight edges of a light outwards, as a ball does', () => {
    const wide: FlatSource = { ...box, sourceSize: 300, height: 100, centre: [0, 0, 84], facing: [0, 0, -1] };
    const outline = catchlightOutline(wide, 4);
    const top = outline.filter((_, index) => index >= 32 && index <= 48).map(({ y }) => y);
    expect(Math.max(...top)).toBe(top[8]);
    expect(top[8]).toBeGreaterThan(1.05 * top[0]!);
  });

  it('runs along the rim where the light reaches behind the ball', () => {
    const behind: FlatSource = { ...ring, sourceSize: 96, centre: [40, 0, -60], facing: [-40, 0, 60] };
    const outline = catchlightOutline(behind, 4);
    const hidden = outline.filter(({ seen }) => !seen);
    expect(hidden.length).toBeGreaterThan(0);
    expect(hidden.length).toBeLessThan(64);
    for (const { x, y } of hidden) expect(Math.hypot(x, y)).toEqual(closeTo(4, rounding));
  });

  it('is empty for a light that shows its back, and for one that is hidden as a whole', () => {
    expect(catchlightOutline({ ...ring, facing: [0, 0, 1] }, 4)).toEqual([]);
    expect(catchlightOutline({ ...ring, sourceSize: 2, centre: [0, 0, -90], facing: [0, 0, 1] }, 4)).toEqual([]);
  });

  it('turns with the camera', () => {
    const fromAbove = catchlightPoint([0, 100, 0], 4, { towards: [0, 1, 0], distance: Infinity });
    expect([fromAbove.x, fromAbove.y]).toEqual([0, 0]);
    expect(fromAbove.place).toEqual([0, 4, 0]);
    const rolled = catchlightPoint([50, 0, 80], 4, { towards: [0, 0, 1], distance: Infinity, up: [1, 0, 0] });
    const upright = catchlightPoint([50, 0, 80], 4);
    expect(rolled.y).toEqual(closeTo(upright.x, rounding));
  });

  it('is larger in the picture of a near camera, whose line of sight slants past the ball', () => {
    const near = catchlightPoint([0, 50, 80], 4, { towards: [0, 0, 1], distance: 1e7 });
    const far = catchlightPoint([0, 50, 80], 4);
    expect(near.y).toEqual(closeTo(far.y, { relative: 2e-6, because: 'the camera is 10 km away' }));
    const close = catchlightPoint([0, 50, 80], 4, { towards: [0, 0, 1], distance: 40 });
    expect(close.y).not.toEqual(closeTo(far.y, { relative: 0.01, because: 'a camera ten radii away' }));
  });

  it('refuses a light or camera within the ball, and a ball of no radius', () => {
    expect(() => catchlightOutline(ring, 0)).toThrow(OutOfRange);
    expect(() => catchlightOutline({ ...ring, centre: [0, 0, 3], sourceSize: 1 }, 4)).toThrow(
      /ball-radius is 4; accepted: below 3, where the nearest/,
    );
    // Its rim is outside, but the plane of a wide light cuts the ball; a point in its middle is nearest.
    const across = { ...ring, centre: [1, 0, 3.5], facing: [0, 0, -1], sourceSize: 90 } as const;
    expect(() => catchlightOutline(across, 4)).toThrow(/below 3.5/);
    const card: FlatSource = { ...across, shape: 'rectangle', centre: [0, 60, 30], sourceSize: 40, height: 40 };
    expect(() => catchlightOutline(card, 51)).toThrow(/below 50, where/);
    expect(() => catchlightOutline(card, 49)).not.toThrow();
    for (const points of [2, 3.5, NaN])
      expect(() => catchlightOutline(ring, 4, undefined, points)).toThrow(/number of points/);

    expect(() => catchlightOutline(ring, 4, { towards: [0, 0, 1], distance: 3 })).toThrow(OutOfRange);
  });
});
