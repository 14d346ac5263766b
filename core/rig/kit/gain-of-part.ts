import type { KitChain } from './built-chain.ts';
import type { KitRow, KitSubject } from './kit.ts';
import { searchKit } from './search-kit.ts';
import type { KitSearch } from './search-sound-kit.ts';

/** What one further part would be worth. */
export interface PartGain {
  /** Chains that only it makes possible, and how many of them do what is wanted. */
  readonly chains: number;
  readonly suited: number;
  /** The best chain without it and with it; null where none does what is wanted. */
  readonly bestBefore: KitChain | null;
  readonly bestAfter: KitChain | null;
  /** Stops that the best chain gains, 0 where the new one only has fewer parts for as many; null where none did what is wanted before. */
  readonly merit: number | null;
}

/**
 * The marginal gain of one further part: the same search with it and without it.
 *
 * @param kit what is there; @param part what might be added, its id new
 * @param subject as for `searchKit`; @param budget as for `searchKit`
 * @returns the gain, never below 0 in any figure: what could be done before can be done still
 * @throws FaultyKit, OutOfRange as `searchKit` does
 */
export function gainOfPart(kit: readonly KitRow[], part: KitRow, subject: KitSubject, budget: number): PartGain {
  const after = searchKit([...kit, part], subject, budget);
  // The first camera or the first lens: without it nothing could be built.
  const isFirst = (part.part === 'camera' || part.part === 'lens') && !kit.some((row) => row.part === part.part);
  const before = isFirst ? null : searchKit(kit, subject, budget);
  const bestBefore = before && best(before);
  const bestAfter = best(after);
  return {
    chains: after.count - (before?.count ?? 0),
    suited: after.suited.length - (before?.suited.length ?? 0),
    bestBefore,
    bestAfter,
    merit: bestBefore && bestAfter ? Math.max(0, (bestAfter.merit ?? 0) - (bestBefore.merit ?? 0)) : null,
  };
}

function best(search: KitSearch): KitChain | null {
  const [first] = search.suited;
  return first === undefined ? null : search.chain(first);
}
