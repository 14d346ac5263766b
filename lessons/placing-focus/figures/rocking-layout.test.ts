import { describe, expect, it } from 'vitest';
import { keeperScatter } from '#core/exposure/keeper-scatter.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { beginOf, dealtFrames, deviatesOf, handAt, secondsOf } from './dealt.ts';
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

describe('a hand on its way', () => {
  it('takes its frames in order, at least a quarter of a second apart', () => {
    for (let turn = 0; turn < 50; turn++) {
      const seconds = [beginOf(turn), ...secondsOf(turn), beginOf(turn + 1)];
      for (const [index, second] of seconds.slice(1).entries()) {
        const apart = index === 0 || index === dealtFrames ? 0.1 : 0.23;
        expect(second - seconds[index]!).toBeGreaterThan(apart);
      }
    }
  });

  it('is where its frames were taken, and moves no faster than a hand', () => {
    expect(secondsOf(3).map(handAt)).toEqual(deviatesOf(3));
    for (let second = 0; second < 240; second += 1 / 60)
      // A sixtieth of a second, where the usual speed is seven sways a second: four and a half times that.
      expect(Math.abs(handAt(second + 1 / 60) - handAt(second))).toBeLessThan(32 / 60);
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

  it('scatters from deal to deal as frames do that are taken by chance', () => {
    for (const focusOffset of [0, 0.4, 1]) {
      const here = { ...state, focusOffset };
      const share = keeperShare({ sway: 1, focusOffset, nearLimit: 0.5, farLimit: 0.5 });
      const counts = Array.from({ length: 1000 }, (_, turn) => keepersOf({ ...here, turn }, here));
      const mean = counts.reduce((a, b) => a + b) / counts.length;
      const spread = Math.sqrt(counts.reduce((sum, one) => sum + (one - mean) ** 2, 0) / counts.length);
      // The spread of a thousand counts is found within 2.2 %, two times out of three; frames that are neighbours on one way lean on each other by as much.
      expect(Math.abs(spread / keeperScatter({ frames: dealtFrames, keeperShare: share }) - 1)).toBeLessThan(0.1);
    }
  });

  it('adds up what every deal had', () => {
    const all = [0, 1, 2].map((turn) => keepersOf({ ...state, turn }, state));
    expect(keepersSoFar({ ...state, turn: 2 }, state)).toBe(all.reduce((a, b) => a + b));
    expect(keepersSoFar({ ...state, turn: 2, taken: 0 }, state)).toBe(all[0]! + all[1]!);
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

  it('has no dot on another, none below the foot, and hardly ever one above the curve’s ground', () => {
    let above = 0;
    for (let turn = 0; turn < 100; turn++) {
      const { dots, dot, ground, bottom } = rockingLayout({ ...state, turn }, box);
      if (dots.some(({ y }) => y - dot < ground - 0.01)) above += 1;
      for (const [index, one] of dots.entries()) {
        expect(one.y + dot).toBeLessThanOrEqual(bottom + 0.01);
        const isAlone = dots.slice(index + 1).every(({ x, y }) => Math.hypot(x - one.x, y - one.y) >= 1.9 * dot);
        expect(isAlone, `deal ${turn}, dot ${index}`).toBe(true);
      }
    }
    expect(above).toBeLessThan(6);
  });

  it('has the place in the middle, and the plane that is too near to the right of it, where the lens is', () => {
    const { eyeX, zone, middle, scale, planeAt } = rockingLayout({ ...state, focusOffset: 0.5 }, box);
    expect(eyeX).toBe(box.width / 2);
    expect(zone.width).toBeCloseTo(scale.pixelsPerMillimetre, 9);
    expect(zone.x + zone.width / 2).toBeCloseTo(eyeX, 9);
    expect(middle.x).toBeCloseTo(eyeX + 0.5 * scale.pixelsPerMillimetre, 9);
    expect(planeAt(0)).toBeCloseTo(middle.x, 9);
    expect(planeAt(1) - planeAt(0)).toBeCloseTo(scale.pixelsPerMillimetre, 9);
  });

  it('fills the dots that are in the zone, however unlike its two sides are', () => {
    const unlike = { ...state, nearLimit: 0.2, farLimit: 1.4, focusOffset: 0.3 };
    const { dots, zone } = rockingLayout(unlike, box);
    for (const { x, isKept } of dots) expect(isKept).toBe(x >= zone.x && x <= zone.x + zone.width);
  });
});
