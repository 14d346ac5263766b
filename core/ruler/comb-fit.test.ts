import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { fitComb, type CombFit } from './comb-fit.ts';
import { combStarts } from './comb-start.ts';
import { marksAt, sampleAt, type CombShape } from './comb.ts';
import { placesOfMarks } from './places-of-marks.ts';

/** Marks of *rise* above a ground of one half that gets lighter along the line, a tenth of their spacing wide, standing where k is *phase* and a whole number more. */
function marks(shape: CombShape, phase: number, rise: (s: number) => number, count = 800): Float64Array {
  return Float64Array.from({ length: count }, (_, at) => {
    const s = sampleAt(at, count);
    const turn = 2 * Math.PI * (marksAt(shape, s) - phase);
    return 0.5 + 0.1 * s + rise(s) * Math.exp(4 * (Math.cos(turn) - 1));
  });
}

function fitted(profile: Float64Array, start: CombShape): CombFit {
  const fit = fitComb(profile, start);
  if (!fit) throw new Error('no fit');
  return fit;
}

const shape = { cycles: 40, drift: 0.2 };
const near = { cycles: 40.2, drift: 0.19 };

describe('fitComb', () => {
  it.each([
    [0.1, 0.3],
    [0.1, -0.3],
    [0.45, -0.3],
    [0.8, 0.3],
  ])('knows that marks stand at %f, and whether they are light or dark: %f', (phase, rise) => {
    const fit = fitted(
      marks(shape, phase, () => rise),
      near,
    );
    expect(fit.cycles).toEqual(closeTo(40, { relative: 5e-5, because: 'the slow part at the ends' }));
    expect(fit.drift).toEqual(closeTo(0.2, { absolute: 1e-4, because: 'the slow part at the ends' }));
    expect(fit.phase).toEqual(closeTo(phase, { absolute: 0.002, because: 'the slow part at the ends' }));
  });

  it('explains a comb wholly, all its marks counting and agreeing', () => {
    const fit = fitted(
      marks(shape, 0.3, () => 0.3),
      near,
    );
    // Marks so narrow have a fifth harmonic.
    expect(fit.explained).toBeGreaterThan(0.995);
    expect(fit.explained).toBeLessThanOrEqual(1);
    expect(fit.coherence).toBeGreaterThan(0.99);
    expect(fit.coherence).toBeLessThanOrEqual(1);
    expect(fit.trusted).toEqual(closeTo(40, { relative: 0.01, because: 'the envelope at the ends' }));
  });

  it('counts the marks of the sharp half alone where the other is nearly wiped out', () => {
    const fit = fitted(
      marks({ cycles: 40, drift: 0 }, 0.3, (s) => (s < 0 ? 0.3 : 0.02)),
      { cycles: 40.2, drift: 0 },
    );
    expect(fit.trusted).toEqual(closeTo(20, { absolute: 1.5, because: 'the envelope over the edge' }));
  });

  it('explains what noise leaves', () => {
    const chance = chanceFrom(3);
    const profile = marks(shape, 0.3, () => 0.3);
    const noise = Float64Array.from(profile, () => 0.3 * (chance() - 0.5));
    const variance = (values: Float64Array) => {
      const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
      return values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / values.length;
    };
    const own = variance(marks({ ...shape }, 0.3, () => 0.3).map((one, at) => one - 0.1 * sampleAt(at, 800)));
    const fit = fitted(
      profile.map((one, at) => one + noise[at]!),
      near,
    );
    expect(fit.explained).toEqual(
      closeTo(own / (own + variance(noise)), { absolute: 0.06, because: 'a mean over one mark takes noise, too' }),
    );
  });

  it('is as far off as it says, in marks and in drift, and knows how the two go together', () => {
    const steep = { cycles: 40, drift: 0.5 };
    let [cycles, drift, both, stated] = [0, 0, 0, 0];
    const seeds = 40;
    for (let seed = 0; seed < seeds; seed++) {
      const chance = chanceFrom(seed);
      const fit = fitted(
        marks(steep, 0.3, () => 0.3, 400).map((one) => one + 0.2 * (chance() - 0.5)),
        steep,
      );
      const [byCycles, byDrift] = [fit.cycles - steep.cycles, fit.drift - steep.drift];
      cycles += byCycles ** 2 / fit.variances.cycles / seeds;
      drift += byDrift ** 2 / fit.variances.drift / seeds;
      both += (byCycles * byDrift) / Math.sqrt(fit.variances.cycles * fit.variances.drift) / seeds;
      stated += fit.variances.both / Math.sqrt(fit.variances.cycles * fit.variances.drift) / seeds;
    }
    // 1 for perfect errors, a mean of forty squares known to a quarter; the slow part at the ends adds what noise does not know.
    for (const ratio of [cycles, drift]) {
      expect(ratio).toBeGreaterThan(0.6);
      expect(ratio).toBeLessThan(2.5);
    }
    expect(both).toEqual(closeTo(stated, { absolute: 0.4, because: 'forty of them' }));
  });

  it('gives up where no comb is near, and where nothing is', () => {
    expect(fitComb(new Float64Array(400), near)).toBeUndefined();
    expect(
      fitComb(
        marks(shape, 0, () => 0.3),
        { cycles: 25, drift: 0.68 },
      )?.cycles ?? 25,
    ).not.toEqual(closeTo(40, { relative: 0.1, because: 'no fit goes so far' }));
  });
});

describe('combStarts', () => {
  it.each([
    [12, 0],
    [33, -0.4],
    [90, 0.3],
    [150, -0.1],
  ])('begins with the comb that there is, near enough to fit it: %f marks with a drift of %f', (cycles, drift) => {
    const [first] = combStarts(marks({ cycles, drift }, 0.6, () => -0.2, 900));
    expect(first!.cycles).toEqual(closeTo(cycles, { absolute: 0.5, because: 'half a mark is followed by a fit' }));
    expect(first!.drift).toEqual(closeTo(drift, { absolute: 0.8 / cycles, because: 'half a mark at the ends' }));
  });

  it.each([4, -4])('begins with faint marks on a ground that gets lighter by far more than they show: %d', (slope) => {
    const shape = { cycles: 33, drift: 0 };
    const profile = marks(shape, 0.6, () => 0.05, 900).map((light, at) => light + slope * sampleAt(at, 900));
    expect(combStarts(profile)[0]!.cycles).toEqual(
      closeTo(33, { absolute: 0.5, because: 'half a mark is followed by a fit' }),
    );
  });

  it('gives up to three, no two alike, and none on a line that cannot cross eight marks', () => {
    const starts = combStarts(marks({ cycles: 60, drift: 0 }, 0.6, () => -0.2));
    expect(starts).toHaveLength(3);
    const [one, two, three] = starts.map(({ cycles }) => cycles).sort((a, b) => a - b);
    expect(Math.min(two! / one!, three! / two!)).toBeGreaterThan(1.02);
    expect(combStarts(new Float64Array(21))).toEqual([]);
  });
});

describe('placesOfMarks', () => {
  it('are those of the marks along the line, both ends included', () => {
    expect(placesOfMarks({ cycles: 4, drift: 0, phase: 0 })).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(placesOfMarks({ cycles: 4, drift: 0, phase: 0.5 })).toEqual([0.125, 0.375, 0.625, 0.875]);
  });
});
