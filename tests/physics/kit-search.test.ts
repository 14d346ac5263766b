import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exposureTimeFromLuminance } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { rigMatrix } from '#core/rig/cardinal-points.ts';
import { focusMagnificationFor } from '#core/rig/focusing.ts';
import type { KitChain } from '#core/rig/kit/built-chain.ts';
import { chainCount } from '#core/rig/kit/chain-count.ts';
import { gainOfPart } from '#core/rig/kit/gain-of-part.ts';
import type { KitRow, KitSubject } from '#core/rig/kit/kit.ts';
import { searchKit, type KitSearch } from '#core/rig/kit/search-kit.ts';
import { closestMagnification } from '#core/rig/lens-in-use.ts';
import type { Camera, Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import { stopsOf } from '#core/rig/stops.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { kits, subjects } from '#tests/support/kits.ts';

/** The other way to find all chains: mount whatever fits on what is there, part after part, and strike out what is the same. */
function byMounting(kit: readonly KitRow[]): Set<string> {
  const found = new Set<string>();
  const go = (chain: readonly KitRow[], end: string) => {
    if (chain.some(({ part }) => part === 'lens') && end !== 'thread for a front') found.add(keyOf(chain));
    for (const row of kit) {
      if (chain.includes(row) || (row.part === 'converter' && chain.some(({ part }) => part === 'converter'))) continue;
      const next = endAfter(row, end);
      if (next !== undefined) go([...chain, row], next);
    }
  };
  for (const row of kit) if (row.part === 'camera') go([row], row.mount);
  return found;
}

/** What a part offers to the next when mounted on *end*; undefined where it does not fit. */
function endAfter(row: KitRow, end: string): string | undefined {
  switch (row.part) {
    case 'camera':
      return undefined;
    case 'ring':
    case 'converter':
      return row.mount === end ? end : undefined;
    case 'reversing ring':
      return row.mount === end ? 'thread for a front' : undefined;
    case 'coupling ring':
      return end === 'front' ? 'thread for a front' : undefined;
    case 'close-up lens':
      return end === 'front' || end === 'close-up' ? 'close-up' : undefined;
    case 'lens':
      if (end === 'thread for a front') return 'nothing';
      return row.mount === end ? 'front' : undefined;
  }
}

/** The same for the same chain: names left out, neighbours of one kind in the order of what they are. */
function keyOf(chain: readonly KitRow[]): string {
  const runs: string[][] = [];
  chain.forEach(({ id: _, ...rest }, index) => {
    const text = JSON.stringify(rest);
    const loose = rest.part === 'ring' || rest.part === 'close-up lens';
    if (loose && chain[index - 1]?.part === rest.part) runs.at(-1)?.push(text);
    else runs.push([text]);
  });
  return JSON.stringify(runs.map((run) => run.sort()));
}

function chainsOf(search: KitSearch): readonly KitChain[] {
  return Array.from({ length: search.count }, (_, index) => search.chain(index));
}

const rowsOf = (kit: readonly KitRow[], { ids }: KitChain) => ids.map((id) => kit.find((row) => row.id === id)!);
const keysOf = (kit: readonly KitRow[], search: KitSearch) =>
  chainsOf(search).map((chain) => keyOf(rowsOf(kit, chain)));

const subject: KitSubject = {
  subjectWidth: 30,
  subjectDepth: 1,
  subjectSpeed: 1,
  leastFill: 0.5,
  nearestDistance: 20,
  longestExposure: 1,
  luminance: 1000,
  iso: 400,
};

describe('all chains of a kit', () => {
  it('are those that come of mounting whatever fits, each once, as many as were counted', () => {
    fc.assert(
      fc.property(kits(6), (kit) => {
        const search = searchKit(kit, subject, Infinity);
        const keys = keysOf(kit, search);
        expect(new Set(keys).size).toBe(keys.length);
        expect(new Set(keys)).toEqual(byMounting(kit));
        expect(chainCount(kit)).toBe(keys.length);
      }),
      { seed: 3, numRuns: 150 },
    );
  });

  it('name no part twice', () => {
    fc.assert(
      fc.property(kits(6), (kit) => {
        for (const { ids } of chainsOf(searchKit(kit, subject, Infinity))) expect(new Set(ids).size).toBe(ids.length);
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it('are all still there when a part is added, which never makes the best worse', () => {
    fc.assert(
      fc.property(kits(6), (rows) => {
        const kit = rows.slice(0, -1);
        const part = rows.at(-1)!;
        fc.pre(kit.some((row) => row.part === 'camera') && kit.some((row) => row.part === 'lens'));
        const before = keysOf(kit, searchKit(kit, subject, 100));
        const after = new Set(keysOf(rows, searchKit(rows, subject, 100)));
        for (const key of before) expect(after).toContain(key);
        const gain = gainOfPart(kit, part, subject, 100);
        expect(gain.chains).toBe(after.size - before.length);
        expect(gain.suited).toBeGreaterThanOrEqual(0);
        if (gain.merit !== null) expect(gain.merit).toBeGreaterThanOrEqual(0);
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it('come out in the same order whatever that of the rows', () => {
    const both = kits(6).chain((kit) =>
      fc.tuple(fc.constant(kit), fc.shuffledSubarray([...kit], { minLength: kit.length })),
    );
    fc.assert(
      fc.property(both, subjects, ([kit, shuffled], wanted) => {
        const ranking = (rows: readonly KitRow[]) => {
          const search = searchKit(rows, wanted, 100);
          return [...search.suited].map((index) => search.chain(index)).map(({ ids, merit }) => [ids, merit]);
        };
        expect(ranking(shuffled)).toEqual(ranking(kit));
      }),
      { seed: 6, numRuns: 60 },
    );
  });

  it('are ranked by merit, then price', () => {
    fc.assert(
      fc.property(kits(7), subjects, (kit, wanted) => {
        const search = searchKit(kit, wanted, Infinity);
        const chains = [...search.suited].map((index) => search.chain(index));
        chains.slice(1).forEach(({ merit, price }, index) => {
          const before = chains[index]!;
          expect(before.merit! > merit! || (before.merit === merit && before.price <= price)).toBe(true);
        });
        expect(Object.values(search.tally).reduce((sum, count) => sum + count, 0)).toBe(search.count);
      }),
      { seed: 7, numRuns: 40 },
    );
  });
});

/** Judged a second time, by what the engine and the formulas for single questions say. */
function judgedByEngine(chain: KitChain, rows: readonly KitRow[], wanted: KitSubject, budget: number) {
  if (chain.price > budget) return { verdict: 'over budget' };
  const camera = rows[0] as Extract<KitRow, { part: 'camera' }>;
  const index = chain.parts.findIndex(({ part }) => part === 'lens');
  const lens = rows[index] as Extract<KitRow, { part: 'lens' }>;
  const set = (focusMagnification: number, fNumber: number) =>
    assembleRig(
      chain.parts.map((part, at): Part => (at === index ? ({ ...part, focusMagnification, fNumber } as Part) : part)),
    );
  const largest = (chain.parts[0] as Camera).sensorWidth / wanted.subjectWidth;
  const reversed = (chain.parts[index] as Extract<Part, { part: 'lens' }>).reversed === true;
  const signed = (at: number) => -rigMatrix(set(at, 8))[3];
  const closest = closestMagnification(lens.lens);
  const nearest = Math.abs(signed(closest) - largest) < Math.abs(signed(0) - largest) ? closest : 0;
  const at = reversed ? 0 : (focusMagnificationFor(chain.parts, index, largest) ?? nearest);

  const open = solveRig(set(at, lens.maxAperture));
  if (open.sharpPlane === 'nowhere' || open.sharpPlane === 'at infinity' || open.upright)
    return { verdict: 'no picture' };
  if (open.magnification > largest * (1 + 1e-9)) return { verdict: 'too large' };
  if (open.magnification < largest * wanted.leastFill * (1 - 1e-9)) return { verdict: 'too small' };
  if (open.sharpPlane === 'inside') return { verdict: 'inside' };
  if (open.workingDistance < wanted.nearestDistance) return { verdict: 'too near' };

  const needed = (wanted.subjectDepth * open.magnification ** 2) / (2 * camera.circleOfConfusion);
  const own = stopsOf(set(at, lens.maxAperture)).find(({ part }) => part === index)!;
  const most = own.apertureControl === 'nowhere' ? lens.maxAperture : lens.smallestAperture;
  const fNumber = Math.min(most, Math.max(lens.maxAperture, (needed / own.effectiveFNumber) * lens.maxAperture));
  const solved = solveRig(set(at, fNumber));
  if (solved.sharpPlane !== 'in front') throw new Error('stopping down moved the sharp plane');
  if (solved.effectiveFNumber < needed * (1 - 1e-9)) return { verdict: 'too shallow' };
  const { effectiveFNumber, magnification } = solved;
  const { luminance, iso, subjectSpeed, longestExposure } = wanted;
  const exposure = exposureTimeFromLuminance({ effectiveFNumber, reflectedLightConstant: 12.5, luminance, iso });
  const steady = Math.min(longestExposure, camera.circleOfConfusion / (magnification * subjectSpeed));
  const merit = Math.log2(steady / exposure) + 2 * Math.log2(magnification / largest);
  return exposure > steady * (1 + 1e-9) ? { verdict: 'too dark' } : { verdict: 'suited', merit, solved };
}

describe('the verdict on a chain', () => {
  const passed = new Map<string, number>();

  it('is what the engine says, chain by chain, and so are setting and merit', () => {
    fc.assert(
      fc.property(kits(6), subjects, fc.constantFrom(60, Infinity), (kit, wanted, budget) => {
        const search = searchKit(kit, wanted, budget);
        for (let index = 0; index < search.count; index += Math.max(1, Math.floor(search.count / 60))) {
          const chain = search.chain(index);
          const theirs = judgedByEngine(chain, rowsOf(kit, chain), wanted, budget);
          expect(chain.verdict, chain.ids.join(', ')).toBe(theirs.verdict);
          expect(search.verdictOf(index)).toBe(theirs.verdict);
          passed.set(chain.verdict, (passed.get(chain.verdict) ?? 0) + 1);
          if (theirs.merit === undefined || theirs.solved.sharpPlane !== 'in front') continue;
          const near = { absolute: 1e-8, because: 'two ways to find the focus setting' };
          expect(chain.merit).toEqual(closeTo(theirs.merit, near));
          if (chain.solved.sharpPlane !== 'in front') throw new Error(chain.solved.sharpPlane);
          const relative = { relative: 1e-8, because: near.because };
          expect(chain.solved.magnification).toEqual(closeTo(theirs.solved.magnification, relative));
          expect(chain.solved.workingDistance).toEqual(closeTo(theirs.solved.workingDistance, relative));
          expect(chain.solved.effectiveFNumber).toEqual(closeTo(theirs.solved.effectiveFNumber, relative));
        }
      }),
      { seed: 8, numRuns: 600 },
    );
  });

  it('has been passed in every way there is', () => {
    for (const verdict of [
      'suited',
      'over budget',
      'no picture',
      'too large',
      'too small',
      'inside',
      'too near',
      'too shallow',
      'too dark',
    ]) {
      expect(passed.get(verdict) ?? 0, verdict).toBeGreaterThan(5);
    }
  });
});
