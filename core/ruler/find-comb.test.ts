import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { marksAt, placeOfMark, sampleAt, type CombShape } from './comb.ts';
import { findComb, noCombWords } from './find-comb.ts';

/** Thin dark marks in noise. */
function profileOf(shape: CombShape, count: number, noise: number, seed: number): Float64Array {
  const chance = chanceFrom(seed);
  return Float64Array.from({ length: count }, (_, at) => {
    const turn = 2 * Math.PI * (marksAt(shape, sampleAt(at, count)) + 0.3);
    return 0.6 - 0.2 * Math.cos(turn) - 0.1 * Math.cos(2 * turn) + noise * (chance() + chance() + chance() - 1.5);
  });
}

describe('findComb', () => {
  it('finds 80.25 marks with a drift of −0.05 to a few parts in a million where there is no noise', () => {
    const found = findComb(profileOf({ cycles: 80.25, drift: -0.05 }, 900, 0, 1));
    if (found.outcome !== 'comb') throw new Error(noCombWords(found));
    expect(found.cycles).toEqual(closeTo(80.25, { relative: 1e-5, because: 'what detrending leaves at the ends' }));
    expect(found.drift).toEqual(closeTo(-0.05, { absolute: 2e-4, because: 'what detrending leaves at the ends' }));
  });

  it('finds any comb within six of its own standard errors', () => {
    const any = fc.record({
      cycles: fc.double({ min: 12, max: 180, noNaN: true }),
      drift: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      noise: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      seed: fc.nat(1000),
    });
    fc.assert(
      fc.property(any, ({ cycles, drift, noise, seed }) => {
        const found = findComb(profileOf({ cycles, drift }, 1000, noise, seed));
        if (found.outcome !== 'comb') throw new Error(noCombWords(found));
        const margin = (variance: number, least: number) => 6 * Math.sqrt(variance) + least;
        expect(Math.abs(found.cycles - cycles)).toBeLessThan(margin(found.variances.cycles, 2e-4 * cycles));
        expect(Math.abs(found.drift - drift)).toBeLessThan(margin(found.variances.drift, 0.2 / cycles));
      }),
      { numRuns: 25 },
    );
  });

  it('finds the comb that it is told to be near, and none but that', () => {
    const shape = { cycles: 60.5, drift: 0.1 };
    const profile = profileOf(shape, 900, 0.02, 1);
    const found = findComb(profile, { cycles: 60.6, drift: 0.1 });
    expect(found).toMatchObject({ outcome: 'comb', cycles: closeTo(60.5, { relative: 1e-3, because: 'noise' }) });
    expect(findComb(profile, { cycles: 100, drift: 0 })).toEqual({ outcome: 'no comb', because: 'no pattern' });
  });

  it('finds none in noise, and none of so few marks or so fine ones that chance would do', () => {
    const chance = chanceFrom(5);
    const noise = Float64Array.from({ length: 400 }, chance);
    expect(findComb(noise)).toEqual({ outcome: 'no comb', because: 'no pattern' });
    const of = (cycles: number) => findComb(profileOf({ cycles, drift: 0 }, 400, 0.001, 1), { cycles, drift: 0 });
    expect(of(7)).toEqual({ outcome: 'no comb', because: 'too short' });
    expect(of(8).outcome).toBe('comb');
    // Seen aslant, so that marks 2.55 samples apart in the middle are 2.3 apart at one end.
    const aslant = { cycles: 399 / 2.55, drift: 0.1 };
    const fine = Float64Array.from({ length: 400 }, (_, at) =>
      Math.cos(2 * Math.PI * marksAt(aslant, sampleAt(at, 400))),
    );
    expect(findComb(fine, aslant)).toEqual({ outcome: 'no comb', because: 'too fine' });
  });

  it('says that a line is too short, and that one tone has no marks', () => {
    expect(findComb(new Float64Array(10))).toEqual({ outcome: 'no comb', because: 'too short' });
    const even = findComb(new Float64Array(500).fill(0.5));
    expect(even).toEqual({ outcome: 'no comb', because: 'even' });
    expect(noCombWords(even as never)).toMatch(/one even tone/);
  });
});

describe('placeOfMark', () => {
  it('is the inverse of marksAt', () => {
    const shape = { cycles: 60, drift: -0.2 };
    for (const s of [-0.5, -0.1, 0, 0.3, 0.5])
      expect(placeOfMark(shape, marksAt(shape, s))).toEqual(closeTo(s, { absolute: 1e-15, because: 'rounding' }));
  });
});
