import { describe, expect, it } from 'vitest';
import { deviates, dealtFrames } from './dealt.ts';
import { keepersOf, rockingLayout, type Rocking } from './rocking-layout.ts';

const box = { width: 695, height: 450, text: 14.5, small: 12.3 };
const state: Rocking = {
  sway: 1,
  focusOffset: 0,
  nearLimit: 0.5,
  farLimit: 0.5,
  closed: { nearLimit: 1, farLimit: 1 },
};

describe('the frames that are dealt', () => {
  it('lie about their middle as a bell curve has them', () => {
    expect(deviates).toHaveLength(dealtFrames);
    const mean = deviates.reduce((sum, one) => sum + one, 0) / dealtFrames;
    const spread = Math.sqrt(deviates.reduce((sum, one) => sum + (one - mean) ** 2, 0) / dealtFrames);
    // Forty of them: the mean is one in six sways off, the spread one in nine, two thirds of the time.
    expect(Math.abs(mean)).toBeLessThan(0.32);
    expect(Math.abs(spread - 1)).toBeLessThan(0.22);
  });
});

describe('the sheet of rocking', () => {
  it('draws as kept as many dots as it counts, and as many dots as frames', () => {
    for (const focusOffset of [0, 0.4, -2]) {
      const here = { ...state, focusOffset };
      const { dots } = rockingLayout(here, box);
      expect(dots).toHaveLength(dealtFrames);
      expect(dots.filter(({ isKept }) => isKept)).toHaveLength(keepersOf(here, here));
    }
    expect(keepersOf(state, state.closed)).toBeGreaterThan(keepersOf(state, state));
    expect(keepersOf(state, { nearLimit: 100, farLimit: Infinity })).toBe(dealtFrames);
  });

  it('has no dot on another, and all between the curve’s ground and the foot', () => {
    const { dots, dot, ground, bottom } = rockingLayout(state, box);
    for (const [index, one] of dots.entries()) {
      expect(one.y - dot).toBeGreaterThanOrEqual(ground - 0.01);
      expect(one.y + dot).toBeLessThanOrEqual(bottom + 0.01);
      const isAlone = dots.slice(index + 1).every(({ x, y }) => Math.hypot(x - one.x, y - one.y) >= 1.9 * dot);
      expect(isAlone, `dot ${index}`).toBe(true);
    }
  });

  it('has the slab about the plane in the middle, and the place beyond it to the left', () => {
    const { planeX, slab, middle, scale } = rockingLayout({ ...state, focusOffset: 0.5 }, box);
    expect(planeX).toBe(box.width / 2);
    expect(slab.width).toBeCloseTo(scale.pixelsPerMillimetre, 9);
    expect(slab.x + slab.width / 2).toBeCloseTo(planeX, 9);
    expect(middle.x).toBeCloseTo(planeX - 0.5 * scale.pixelsPerMillimetre, 9);
  });
});
