import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defocusBlur } from '#core/depth/defocus-blur.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { keeperFrames } from '#core/exposure/keeper-frames.formula.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { lensAtWork } from '#tests/support/lenses.ts';

/** Normal deviates by Box and Muller: the length of a random vector from one number, its direction from the other. */
function deviatesFrom(seed: number): () => number {
  const chance = chanceFrom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}

/** How many of *frames* are in focus, each held to the blur that it really has. */
function keepersOf(lens: ReturnType<typeof lensAtWork>, sway: number, frames: number, seed: number): number {
  const deviate = deviatesFrom(seed);
  let keepers = 0;
  for (let frame = 0; frame < frames; frame++) {
    const offset = sway * deviate();
    if (offset > -lens.entrancePupilDistance && defocusBlur({ ...lens, offset }) <= lens.circleOfConfusion) keepers++;
  }
  return keepers;
}

/** How many standard deviations of a count of *frames* it lies from the share that the core gives. */
function strayOf(lens: ReturnType<typeof lensAtWork>, sway: number, frames: number, seed: number): number {
  const share = keeperShare({ nearLimit: nearLimit(lens), farLimit: farLimit(lens), sway, focusOffset: 0 });
  return (keepersOf(lens, sway, frames, seed) - frames * share) / Math.sqrt(frames * share * (1 - share));
}

const macro = lensAtWork({
  focalLength: 90,
  fNumber: 11,
  magnification: 0.4,
  pupilMagnification: 0.7,
  circleOfConfusion: 0.03,
});

describe('frames taken while swaying', () => {
  it('are in focus as often as the share says', () => {
    expect(Math.abs(strayOf(macro, 3, 200_000, 41))).toBeLessThan(4);
  });

  it('are so with limits that differ much', () => {
    const wide = lensAtWork({ ...macro, focalLength: 20, magnification: 0.05, fNumber: 8 });
    expect(farLimit(wide)).toBeGreaterThan(1.4 * nearLimit(wide));
    expect(Math.abs(strayOf(wide, 60, 200_000, 42))).toBeLessThan(4);
  });

  it('stray from it as chance does, over many lenses and sways', () => {
    const squares: number[] = [];
    const camera = fc.record({
      fNumber: fc.double({ min: 2, max: 32, noNaN: true }),
      magnification: fc.double({ min: 0.1, max: 5, noNaN: true }),
      times: fc.double({ min: 0.3, max: 3, noNaN: true }),
      seed: fc.integer({ min: 0, max: 2 ** 31 }),
    });
    fc.assert(
      fc.property(camera, ({ fNumber, magnification, times, seed }) => {
        const lens = lensAtWork({ ...macro, fNumber, magnification });
        squares.push(strayOf(lens, times * nearLimit(lens), 2000, seed) ** 2);
      }),
      { seed: 43, numRuns: 200 },
    );
    const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
    // Squares of 200 normal deviates have a mean of 1 ± 0.1.
    expect(mean).toBeGreaterThan(0.6);
    expect(mean).toBeLessThan(1.4);
  });

  it('hold a keeper nineteen times out of twenty, and with one frame fewer less often', () => {
    const share = keeperShare({ nearLimit: nearLimit(macro), farLimit: farLimit(macro), sway: 6, focusOffset: 0 });
    const frames = keeperFrames({ keeperShare: share });
    const chance = chanceFrom(44);
    const runs = 50_000;
    const missed = (count: number) => {
      let misses = 0;
      for (let run = 0; run < runs; run++) {
        let keeper = false;
        for (let frame = 0; frame < count; frame++) keeper ||= chance() < share;
        if (!keeper) misses++;
      }
      return misses / runs;
    };
    const strays = 4 * Math.sqrt((0.05 * 0.95) / runs);
    expect(frames).toBeGreaterThan(4);
    expect(missed(frames)).toBeLessThan(0.05 + strays);
    expect(missed(frames - 1)).toBeGreaterThan(0.05 - strays);
  });
});
