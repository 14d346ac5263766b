import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balancedFocus } from '#core/depth/balanced-focus.ts';
import { defocusBlurOfCone } from '#core/depth/blur-of-cone.ts';
import { exposureTimeFromLuminance } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { rigMatrix } from '#core/rig/cardinal-points.ts';
import { focusMagnificationFor } from '#core/rig/focusing.ts';
import type { KitChain } from '#core/rig/kit/built-chain.ts';
import { chainCount } from '#core/rig/kit/chain-count.ts';
import { gainOfPart } from '#core/rig/kit/gain-of-part.ts';
import type { KitRow, KitSubject } from '#core/rig/kit/kit.ts';
import { searchKit } from '#core/rig/kit/search-kit.ts';
import type { KitSearch } from '#core/rig/kit/search-sound-kit.ts';
import { closestMagnification } from '#core/rig/lens-in-use.ts';
import type { Camera, Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import type { SharpRig } from '#core/rig/solved-rig.ts';
import { stopsOf } from '#core/rig/stops.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { body36, kits, knownConverter, normalLens, subjects } from '#tests/support/kits.ts';

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
  wavelength: 0.00055,
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

  it('are ranked by merit in tenths of a stop, then by few parts, much room and a low price', () => {
    fc.assert(
      fc.property(kits(7), subjects, (kit, wanted) => {
        const search = searchKit(kit, wanted, Infinity);
        const chains = [...search.suited].map((index) => search.chain(index));
        const key = ({ merit, parts, solved, price }: KitChain) => {
          if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
          const whole = (value: number) => Math.round(value + 1e-6);
          return [-whole(10 * merit!), parts.length, -whole(solved.workingDistance), price];
        };
        chains.slice(1).forEach((chain, index) => {
          const [before, after] = [key(chains[index]!), key(chain)];
          const first = before.findIndex((value, place) => value !== after[place]);
          if (first >= 0) expect(before[first]).toBeLessThan(after[first]!);
        });
        expect(Object.values(search.tally).reduce((sum, count) => sum + count, 0)).toBe(search.count);
      }),
      { seed: 7, numRuns: 40 },
    );
  });
});

interface Judged {
  readonly verdict: string;
  readonly found?: { readonly merit: number; readonly solved: SharpRig };
  /** The setting was found by halving, here as there. */
  readonly halved?: boolean;
}

interface Blurring extends Pick<KitSubject, 'subjectDepth' | 'wavelength'> {
  readonly open: number;
  readonly most: number;
  readonly c: number;
}

/** The chain opened as far as the blur of the subject's ends allows, found by halving f-numbers; or what stands against it. */
function setFor(at: (fNumber: number) => SharpRig, { open, most, c, subjectDepth, wavelength }: Blurring) {
  const enough = c * (1 + 1e-13);
  const focusOf = (solved: SharpRig) => (subjectDepth > 0 ? -balancedFocus({ ...solved, subjectDepth }).toNearest : 0);
  const defocus = (fNumber: number) => defocusBlurOfCone({ ...at(fNumber), offset: focusOf(at(fNumber)) });
  const both = (fNumber: number) => Math.hypot(defocus(fNumber), wavelength * at(fNumber).effectiveFNumber);
  if (both(open) <= enough) return at(open);
  // From where diffraction outgrows defocus on, stopping down makes it worse.
  const past = (fNumber: number) => defocus(fNumber) <= wavelength * at(fNumber).effectiveFNumber;
  if (past(open)) return 'too soft';
  const end = past(most) ? halved(open, most, past) : most;
  if (both(end) <= enough) return at(halved(open, end, (fNumber) => both(fNumber) <= enough));
  // Would more stops have helped, had the iris had them?
  const helps = 2 * defocus(end) * wavelength * at(end).effectiveFNumber <= enough ** 2;
  return (helps && end === most) || defocus(most) > enough ? 'too shallow' : 'too soft';
}

/** The least number from which on *holds* is true, which it is at *high* and not at *low*. */
function halved(low: number, high: number, holds: (value: number) => boolean): number {
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Judges a chain a second time, by what the engine and the formulas for single questions say of it at each setting of its main lens. */
function engineJudge(chain: KitChain, rows: readonly KitRow[], wanted: KitSubject) {
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
  const closest = reversed ? 0 : closestMagnification(lens.lens);

  /** The setting for a magnification, or the end of the focus ring that comes nearest to it. */
  function settingFor(magnification: number): number {
    if (reversed) return 0;
    const nearest = Math.abs(signed(closest) - magnification) < Math.abs(signed(0) - magnification) ? closest : 0;
    return focusMagnificationFor(chain.parts, index, magnification) ?? nearest;
  }

  function judgedAt(at: number): Judged {
    const open = solveRig(set(at, lens.maxAperture));
    if (open.sharpPlane === 'at infinity') return { verdict: 'too small' };
    if (open.sharpPlane === 'nowhere' || open.upright) return { verdict: 'no picture' };
    if (open.magnification > largest * (1 + 1e-9)) return { verdict: 'too large' };
    if (open.magnification < largest * wanted.leastFill * (1 - 1e-9)) return { verdict: 'too small' };
    if (open.sharpPlane === 'inside') return { verdict: 'inside' };
    if (open.workingDistance < wanted.nearestDistance) return { verdict: 'too near' };

    const c = camera.circleOfConfusion * Math.min(1, open.magnification / largest);
    const own = stopsOf(set(at, lens.maxAperture)).find(({ part }) => part === index)!;
    const most = own.apertureControl === 'nowhere' ? lens.maxAperture : lens.smallestAperture;
    const stopped = setFor(
      (fNumber) => {
        const solved = solveRig(set(at, fNumber));
        if (solved.sharpPlane !== 'in front') throw new Error('stopping down moved the sharp plane');
        return solved;
      },
      { open: lens.maxAperture, most, c, ...wanted },
    );
    if (typeof stopped === 'string') return { verdict: stopped };
    const solved = stopped;
    const { effectiveFNumber, magnification } = solved;
    const { luminance, iso, subjectSpeed, longestExposure } = wanted;
    const exposure = exposureTimeFromLuminance({ effectiveFNumber, reflectedLightConstant: 12.5, luminance, iso });
    const steady = Math.min(longestExposure, c / (magnification * subjectSpeed));
    const merit = Math.log2(steady / exposure) + 2 * Math.log2(magnification / largest);
    return exposure > steady * (1 + 1e-9) ? { verdict: 'too dark' } : { verdict: 'suited', found: { merit, solved } };
  }

  return { judgedAt, closest, full: settingFor(largest), least: settingFor(largest * wanted.leastFill) };
}

const eased = ['inside', 'too near', 'too shallow', 'too soft', 'too dark'];

/** The frame filled; or, where that will not do and less of it will, as much of it as will. */
function judgedByEngine(chain: KitChain, rows: readonly KitRow[], wanted: KitSubject): Judged {
  const { judgedAt, full, least } = engineJudge(chain, rows, wanted);
  const filled = judgedAt(full);
  if (!eased.includes(filled.verdict) || least === full) return filled;
  // From the full frame down in eighths, until one will do.
  const steps = Array.from({ length: 8 }, (_, step) => full + ((least - full) * (step + 1)) / 8);
  const doing = judgedAt(least).verdict === 'suited' ? 7 : steps.findIndex((at) => judgedAt(at).verdict === 'suited');
  if (doing < 0) return judgedAt(least);
  let [tooLarge, allowed] = doing === 7 ? [full, least] : [steps[doing - 1] ?? full, steps[doing]!];
  while (Math.abs(tooLarge - allowed) > 1e-9 * Math.abs(full - least)) {
    const middle = (tooLarge + allowed) / 2;
    if (judgedAt(middle).verdict === 'suited') allowed = middle;
    else tooLarge = middle;
  }
  return { ...judgedAt(allowed), halved: true };
}

describe('the verdict on a chain', () => {
  const passed = new Map<string, number>();

  function expectAsEngine(kit: readonly KitRow[], wanted: KitSubject, budget: number): void {
    const search = searchKit(kit, wanted, budget);
    for (let index = 0; index < search.count; index += Math.max(1, Math.floor(search.count / 60))) {
      const chain = search.chain(index);
      const theirs: Judged =
        chain.price > budget ? { verdict: 'over budget' } : judgedByEngine(chain, rowsOf(kit, chain), wanted);
      expect(chain.verdict, chain.ids.join(', ')).toBe(theirs.verdict);
      expect(search.verdictOf(index)).toBe(theirs.verdict);
      passed.set(chain.verdict, (passed.get(chain.verdict) ?? 0) + 1);
      if (!theirs.found) continue;
      const { merit, solved } = theirs.found;
      const exact = theirs.halved ? 5e-3 : 1e-8;
      const near = { absolute: exact, because: 'two ways to find the focus setting' };
      expect(chain.merit).toEqual(closeTo(merit, near));
      if (chain.solved.sharpPlane !== 'in front') throw new Error(chain.solved.sharpPlane);
      const relative = { relative: exact, because: near.because };
      expect(chain.solved.magnification).toEqual(closeTo(solved.magnification, relative));
      // The largest setting that will do may be the one where the room just ends: what is left of it then is all rounding of the setting.
      const room = { absolute: exact * Math.max(1, solved.workingDistance), because: near.because };
      expect(chain.solved.workingDistance).toEqual(closeTo(solved.workingDistance, room));
      expect(chain.solved.effectiveFNumber).toEqual(closeTo(solved.effectiveFNumber, relative));
    }
  }

  it('is what the engine says, chain by chain, and so are setting and merit', () => {
    fc.assert(
      fc.property(kits(6), subjects, fc.constantFrom(60, Infinity), (kit, wanted, budget) => {
        expectAsEngine(kit, wanted, budget);
      }),
      { seed: 8, numRuns: 800 },
    );
  });

  it('is that of a converter by its planes where they are known', () => {
    fc.assert(
      fc.property(kits(3), subjects, (kit, wanted) => expectAsEngine([...kit, knownConverter], wanted, Infinity)),
      { seed: 10, numRuns: 60 },
    );
  });

  it('is against a chain only where no setting of its main lens would do', () => {
    let refused = 0;
    fc.assert(
      fc.property(kits(6), subjects, (kit, wanted) => {
        const search = searchKit(kit, wanted, Infinity);
        for (let index = 0; index < search.count; index += Math.max(1, Math.floor(search.count / 20))) {
          const chain = search.chain(index);
          if (chain.verdict === 'suited') continue;
          refused++;
          const { judgedAt, closest } = engineJudge(chain, rowsOf(kit, chain), wanted);
          for (let step = 0; step <= 25; step++) {
            expect(judgedAt((closest * step) / 25).verdict, chain.ids.join(', ')).not.toBe('suited');
          }
        }
      }),
      { seed: 9, numRuns: 150 },
    );
    expect(refused).toBeGreaterThan(500);
  });

  it('takes the subject smaller where filling the frame will not do', () => {
    const macro: KitRow = {
      ...normalLens,
      lens: { ...normalLens.lens, focusing: { by: 'unit', closestMagnification: 1 } },
    };
    const shy: KitSubject = { ...subject, subjectWidth: 36, subjectDepth: 0, leastFill: 0.3, nearestDistance: 150 };
    const { verdict, solved } = searchKit([body36, macro], shy, Infinity).chain(0);
    expect(verdict).toBe('suited');
    if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
    expect(solved.workingDistance).toEqual(closeTo(150, { absolute: 0.1, because: 'found by halving' }));
    // From w = f (1 + 1/m) − h: m = f/(w + h − f).
    expect(solved.magnification).toEqual(
      closeTo(50 / (150 + 22 - 50), { relative: 1e-3, because: 'found by halving' }),
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
      'too soft',
      'too dark',
    ]) {
      expect(passed.get(verdict) ?? 0, verdict).toBeGreaterThan(5);
    }
  });
});
