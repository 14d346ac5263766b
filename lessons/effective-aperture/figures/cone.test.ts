import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { bench } from '../bench.svelte.ts';
import { coneOf, type ConeGiven } from './cone.ts';
import { isReached, ways, worksAt, type Way } from './ways.ts';

const rounding = { relative: 1e-9, because: 'rounding of the arithmetic' };
const anyGiven: fc.Arbitrary<ConeGiven> = fc.record({
  fNumber: fc.double({ min: 0.95, max: 64, noNaN: true }),
  magnification: fc.double({ min: 0.02, max: 20, noNaN: true }),
  pupilMagnification: fc.double({ min: 0.2, max: 5, noNaN: true }),
  focusMagnification: fc.double({ min: 0, max: 5, noNaN: true }),
  converterFactor: fc.double({ min: 1.01, max: 4, noNaN: true }),
});

describe('a size that cannot be had', () => {
  it('is below the lens’s own with a close-up lens, which only adds to it', () => {
    const atOwn = { magnification: 0.1, focusMagnification: 0.1 };
    const below = { magnification: 0.05, focusMagnification: 0.1 };
    for (const way of Object.keys(ways) as Way[]) {
      expect(isReached(way, atOwn)).toBe(true);
      expect(isReached(way, below)).toBe(way !== 'close-up-lens');
    }
  });

  it('has no effective f-number and no stops, and says why', () => {
    bench.read('?reached-by=close-up-lens&magnification=0.05&focus-magnification=0.1');
    const said = ['effective-f-number', 'light-loss', 'finder-loss'] as const;
    const words = said.map((name) => bench.words(name));
    const [works, lost] = said.map((name) => bench.number(name, undefined));
    bench.read('');
    for (const one of words) expect(one).toBe('none: a close-up lens gives no less than the lens alone, 0.1×');
    expect([works, lost]).toEqual([undefined, undefined]);
  });
});

describe.each(Object.keys(ways) as Way[])('the cone of a lens close up by %s', (way) => {
  it('meets the sensor as slim as the effective f-number says', () => {
    fc.assert(
      fc.property(anyGiven, (given) => {
        const { pupil, converter = pupil } = coneOf(way, given);
        expect(converter.at / (2 * converter.half)).toEqual(closeTo(worksAt(way, given), rounding));
      }),
    );
  });

  it('has the marked f-number far away', () => {
    fc.assert(
      fc.property(anyGiven, (given) => {
        const { faraway } = coneOf(way, given);
        expect(faraway.at / (2 * faraway.half)).toEqual(closeTo(given.fNumber, rounding));
      }),
    );
  });

  it('has its opening the farther from the sensor the larger the picture, so that a hand finds its way back', () => {
    const at = (given: ConeGiven, magnification: number) => coneOf(way, { ...given, magnification }).pupil.at;
    fc.assert(
      fc.property(anyGiven, (given) => {
        const [here, farther] = [at(given, given.magnification), at(given, 1.01 * given.magnification)];
        if (way === 'close-up-lens') expect(farther).toBe(here);
        else expect(farther).toBeGreaterThan(here);
      }),
    );
  });
});
