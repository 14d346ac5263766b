import { blocksOf, judgeAll } from './blocks.ts';
import { builtChain, type KitChain } from './built-chain.ts';
import type { Judgement } from './case.ts';
import { chainCount } from './chain-count.ts';
import { FaultyKit, type KitRow, type KitSubject } from './kit.ts';
import { verdicts, type Verdict } from './verdict.ts';

/** A kit gone through: what does the job, best first, and why all the rest does not. */
export interface KitSearch {
  /** Chains that can be built, numbered from 0 in an order that only the names of the parts decide. */
  readonly count: number;
  /** Numbers of the chains that do what is wanted: most merit first, in tenths of a stop; among equals fewer parts, more room, the cheaper. */
  readonly suited: Uint32Array;
  /** How many chains each verdict was passed on. */
  readonly tally: Readonly<Record<Verdict, number>>;
  /** What was said of a chain. Throws RangeError for a number that no chain has. */
  readonly verdictOf: (chain: number) => Verdict;
  /** What it was said on. Throws RangeError for a number that no chain has. */
  readonly judgementOf: (chain: number) => ChainJudgement;
  /** A chain with its parts, solved as it was judged. Throws RangeError for a number that no chain has. */
  readonly chain: (chain: number) => KitChain;
}

/** How a chain was set when it was judged, and what that gave: for many chains, without putting one together. */
export interface ChainJudgement extends Omit<Judgement, 'verdict'> {
  /** Which of `kitReach` of the same kit it has: many chains share one. */
  readonly reach: number;
}

/** Of sums of prices, and beside the halves between whole numbers, where it would decide a rank. */
const rounding = 1e-9;
const whole = (value: number) => Math.round(value + 1e-6);

/** More chains than this are refused before memory runs out. */
const mostChains = 4_000_000;

/**
 * What `searchKit` does, for a kit and a subject that are known to be sound: pages that search their own kits need not carry what finds the
 * faults of others.
 *
 * @param kit as `searchKit` accepts it; @param subject as `searchKit` accepts it; @param budget 0 or above
 * @returns the search
 * @throws FaultyKit for more chains than there is memory for. Anything else that is wrong gives wrong answers, unnoticed.
 *
 * Source: derived in [README](README.md#judging).
 */
export function searchSoundKit(kit: readonly KitRow[], subject: KitSubject, budget: number): KitSearch {
  const count = chainCount(kit);
  if (count > mostChains) throw new FaultyKit(null, `it allows ${count} chains; accepted: up to ${mostChains}`);

  const blocks = blocksOf(kit);
  const found = judgeAll(blocks, subject);
  const codes = new Uint8Array(count);
  const prices = new Float64Array(count);
  const tenths = new Float64Array(count);
  const rooms = new Float64Array(count);
  const parts = new Uint16Array(count);
  const counts = new Uint32Array(verdicts.length);
  const suited = new Uint32Array(count);
  let suitedCount = 0;
  const dear = verdicts.indexOf('over budget');
  for (const { camera, front, backs, first, judged } of blocks) {
    const price = camera.price + front.price;
    const frontParts = 2 + front.closeUpLenses.length + (front.reversingRing ? 1 : 0) + (front.coupled ? 2 : 0);
    for (let index = 0; index < backs.all.length; index++) {
      const back = backs.all[index]!;
      const chain = first + index;
      const code = price + back.price > budget * (1 + rounding) ? dear : found.codes[judged + back.lengths]!;
      codes[chain] = code;
      counts[code]!++;
      if (code !== 0) continue;
      prices[chain] = price + back.price;
      parts[chain] = frontParts + back.behind.length + back.before.length + (back.converter ? 1 : 0);
      tenths[chain] = whole(10 * found.merits[judged + back.lengths]!);
      rooms[chain] = whole(found.rooms[judged + back.lengths]!);
      suited[suitedCount++] = chain;
    }
  }
  const order = suited
    .slice(0, suitedCount)
    .sort(
      (one, other) =>
        tenths[other]! - tenths[one]! ||
        parts[one]! - parts[other]! ||
        rooms[other]! - rooms[one]! ||
        prices[one]! - prices[other]! ||
        one - other,
    );

  const requireChain = (chain: number) => {
    if (!(Number.isInteger(chain) && chain >= 0 && chain < count)) {
      throw new RangeError(`there is no chain ${chain}; accepted: whole numbers from 0 to ${count - 1}`);
    }
  };
  const verdictOf = (chain: number) => {
    requireChain(chain);
    return verdicts[codes[chain]!]!;
  };
  const placeOf = (chain: number) => {
    const block = blocks.findLast(({ first }) => first <= chain)!;
    const back = block.backs.all[chain - block.first]!;
    return { block, back, judged: block.judged + back.lengths };
  };
  return {
    count,
    suited: order,
    tally: Object.fromEntries(verdicts.map((verdict, code) => [verdict, counts[code]])) as Record<Verdict, number>,
    verdictOf,
    judgementOf: (chain) => {
      requireChain(chain);
      const { judged } = placeOf(chain);
      return {
        focusMagnification: found.focusMagnifications[judged]!,
        fNumber: found.fNumbers[judged]!,
        effectiveFNumber: found.effectiveFNumbers[judged]!,
        magnification: found.magnifications[judged]!,
        merit: found.merits[judged]!,
        room: found.rooms[judged]!,
        reach: judged,
      };
    },
    chain: (chain) => {
      const verdict = verdictOf(chain);
      const { block, back, judged } = placeOf(chain);
      const { focusMagnifications, fNumbers, merits: all } = found;
      const set = { focusMagnification: focusMagnifications[judged]!, fNumber: fNumbers[judged]! };
      return builtChain(kit, block, back, set, verdict, verdict === 'suited' ? all[judged]! : null);
    },
  };
}
