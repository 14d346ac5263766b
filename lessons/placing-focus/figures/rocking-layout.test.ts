import { describe, expect, it } from 'vitest';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { dealtFrames, deviatesOf } from './dealt.ts';
import { keepersOf, keepersSoFar, rockingLayout, type Rocking } from './rocking-layout.ts';

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
    const deviates = deviatesOf(0);
    expect(deviates).toHaveLength(dealtFrames);
    const mean = deviates.reduce((sum, one) => sum + one, 0) / dealtFrames;
    const spread = Math.sqrt(deviates.reduce((sum, one) => sum + (one - mean) ** 2, 0) / dealtFrames);
    // Forty of them: the mean is one in six sways off, the spread one in nine, two thirds of the time.
    expect(Math.abs(mean)).toBeLessThan(0.32);
    expect(Math.abs(spread - 1)).toBeLessThan(0.22);
  });
});

describe('deal after deal', () => {
  it('is another one each time, and the same for everybody', () => {
    expect(deviatesOf(1)).not.toEqual(deviatesOf(0));
    expect(deviatesOf(1)).toEqual([...deviatesOf(1)]);
    expect(rockingLayout({ ...state, turn: 1 }, box).dots).not.toEqual(rockingLayout(state, box).dots);
  });

  it('comes ever nearer to the share that the formula says', () => {
    for (const focusOffset of [0, 0.4]) {
      const here = { ...state, focusOffset };
      const share = keeperShare({ sway: 1, focusOffset, nearLimit: 0.5, farLimit: 0.5 });
      const frames = 250 * dealtFrames;
      const kept = keepersSoFar({ ...here, turn: 249 }, here);
      // Three standard deviations of as many tries.
      expect(Math.abs(kept - share * frames)).toBeLessThan(3 * Math.sqrt(frames * share * (1 - share)));
    }
  });

  it('adds up what every deal had', () => {
    const all = [0, 1, 2].map((turn) => keepersOf({ ...state, turn }, state));
    expect(keepersSoFar({ ...state, turn: 2 }, state)).toBe(all.reduce((a, b) => a + b));
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
