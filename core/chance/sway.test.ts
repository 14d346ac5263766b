import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { swayFrom } from './sway.ts';

const band = { slowest: 0.3, fastest: 1.75 };
const seeds = fc.integer({ min: 1, max: 2 ** 31 - 1 });
/** Moments over an hour and a half, at a step that is in no simple ratio to any wave. */
const moments = Array.from({ length: 20_000 }, (_, index) => index * 0.27182818);

describe('a sway', () => {
  it('is spread as a bell curve is: mean, spread, and the share of time within any slab', () => {
    fc.assert(
      fc.property(
        seeds,
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (seed, half, offset) => {
          const at = moments.map(swayFrom(seed, band));
          const mean = at.reduce((sum, one) => sum + one, 0) / at.length;
          const spread = Math.sqrt(at.reduce((sum, one) => sum + (one - mean) ** 2, 0) / at.length);
          // Waves of one height in equal parts: what is left is the end of the longest one.
          expect(Math.abs(mean)).toBeLessThan(0.01);
          expect(Math.abs(spread - 1)).toBeLessThan(0.02);
          const share = at.filter((one) => Math.abs(one + offset) <= half).length / at.length;
          const bell = keeperShare({ nearLimit: half, farLimit: half, sway: 1, focusOffset: offset });
          // 32 waves lack 0.6 % of a bell curve's height in the middle; 20 000 moments scatter by a third of a per cent at most.
          expect(Math.abs(share - bell)).toBeLessThan(0.015);
        },
      ),
      { seed: 1, numRuns: 12 },
    );
  });

  it('has no wave outside its band: a pace apart it goes together as such a band does', () => {
    const together = (apart: number) => {
      const all = Array.from({ length: 60 }, (_, seed) => swayFrom(seed + 1, band));
      const sum = all.flatMap((at) => moments.slice(0, 200).map((now) => at(now) * at(now + apart)));
      return sum.reduce((a, b) => a + b) / sum.length;
    };
    for (const apart of [0.1, 0.25, 0.5, 0.6, 1.2]) {
      const across = Math.PI * (band.fastest - band.slowest) * apart;
      const expected = (Math.sin(across) / across) * Math.cos(Math.PI * (band.fastest + band.slowest) * apart);
      // Sixty ways, averaged over fifty seconds each.
      expect(Math.abs(together(apart) - expected)).toBeLessThan(0.04);
    }
  });

  it('is the same for the same seed, and another for another', () => {
    expect(swayFrom(7, band)(3.5)).toBe(swayFrom(7, band)(3.5));
    expect(swayFrom(8, band)(3.5)).not.toBe(swayFrom(7, band)(3.5));
  });
});

it.each([
  [{ slowest: 1, fastest: 2 }, NaN],
  [{ slowest: 1, fastest: 2 }, Infinity],
  [{ slowest: NaN, fastest: 2 }, 1],
  [{ slowest: 1, fastest: Infinity }, 1],
])('is nowhere in the band %o at %s s', (band, seconds) => {
  expect(() => swayFrom(1, band)(seconds)).toThrow(RangeError);
});
