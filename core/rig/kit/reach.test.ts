import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { body36, closeUpOf, normalLens, reversingRing, ringOf, wideLens } from '#tests/support/kits.ts';
import { assembleRig } from '../assemble.ts';
import { focusRange } from '../focusing.ts';
import { solveRig } from '../solve.ts';
import { chainCount } from './chain-count.ts';
import type { KitSubject } from './kit.ts';
import { kitReach, kitReachByFront } from './reach.ts';
import { searchKit } from './search-kit.ts';

const kit = [body36, normalLens, wideLens, ringOf(12), ringOf(36), closeUpOf(4), reversingRing];
const rounding = { relative: 1e-8, because: 'two routes through the same lenses' };

const subject: KitSubject = {
  subjectWidth: 40,
  subjectDepth: 0.5,
  subjectSpeed: 1,
  luminance: 500,
  iso: 400,
  wavelength: 0.00055,
  leastFill: 0.6,
  nearestDistance: 50,
  longestExposure: 1,
};

describe('kitReach', () => {
  it('has every chain of the kit in it', () => {
    expect(kitReach(kit, 3).reduce((sum, { chains }) => sum + chains, 0)).toBe(chainCount(kit));
  });

  it('ends where the engine focuses a chain at its closest', () => {
    const reaches = kitReach(kit, 5);
    const search = searchKit(kit, subject, Infinity);
    for (let chain = 0; chain < search.count; chain++) {
      const { parts } = search.chain(chain);
      const range = focusRange(parts);
      // A lens turned round stays at infinity.
      const isTurned = parts.some((part) => part.part === 'lens' && part.reversed);
      const closest = isTurned ? range.farthest : range.closest;
      const place = reaches[search.judgementOf(chain).reach]!.places.at(-1);
      if (!('magnification' in closest) || closest.upright) expect(place).toBeUndefined();
      else {
        expect(place![0]).toEqual(closeTo(closest.magnification, rounding));
        expect(place![1]).toEqual(closeTo(closest.workingDistance, rounding));
      }
    }
  });

  it('has one place for a lens turned round, and no more than are asked for otherwise', () => {
    const bare = kitReach([body36, normalLens, reversingRing], 4);
    // At infinity the bare lens has no magnification.
    expect(bare.map(({ places }) => places.length)).toEqual([3, 1]);
  });

  it('comes in pieces, one for each front, that lie end to end', () => {
    const pieces = [...kitReachByFront(kit, 3)];
    // Two lenses, each with the close-up lens or without: at least.
    expect(pieces.length).toBeGreaterThanOrEqual(4);
    expect(pieces.flat()).toEqual(kitReach(kit, 3));
  });

  it('refuses a single setting', () => {
    expect(() => kitReach(kit, 1)).toThrow(RangeError);
    expect(() => kitReach(kit, 1e6)).toThrow(/10000/);
    expect(() => kitReachByFront(kit, 1).next()).toThrow(RangeError);
  });
});

describe('the judgement on a chain', () => {
  it('is what the engine gives for the chain as it was set', () => {
    const search = searchKit(kit, subject, Infinity);
    for (const chain of search.suited) {
      const { magnification, room, effectiveFNumber, merit } = search.judgementOf(chain);
      const built = search.chain(chain);
      const solved = solveRig(assembleRig(built.parts));
      if (solved.sharpPlane !== 'in front') throw new Error('a chain that suits is sharp in front');
      expect(magnification).toEqual(closeTo(solved.magnification, rounding));
      expect(room).toEqual(closeTo(solved.workingDistance, rounding));
      expect(effectiveFNumber).toEqual(closeTo(solved.effectiveFNumber, rounding));
      expect(merit).toBe(built.merit);
    }
    expect(search.suited.length).toBeGreaterThan(0);
  });

  it('says how far a chain is that fails, and refuses a number that no chain has', () => {
    const search = searchKit(kit, { ...subject, nearestDistance: 10_000 }, Infinity);
    const near = Array.from({ length: search.count }, (_, chain) => chain).filter(
      (chain) => search.verdictOf(chain) === 'too near',
    );
    expect(near.length).toBeGreaterThan(0);
    for (const chain of near) expect(search.judgementOf(chain).room).toBeGreaterThan(0);
    expect(() => search.judgementOf(search.count)).toThrow(RangeError);
  });
});
