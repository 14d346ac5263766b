import type { KitRow, KitSubject } from './kit.ts';
import { requireKit } from './require-kit.ts';
import { requireSubject } from './require-subject.ts';
import { searchSoundKit, type KitSearch } from './search-sound-kit.ts';

/**
 * Every distinct chain that a kit allows, judged against a subject and a budget.
 *
 * @param kit cameras, lenses and parts in any order
 * @param subject what is wanted of a chain
 * @param budget what the parts of one chain may cost together; Infinity where money is no matter
 * @returns the search; chains are put together only when asked for
 * @throws FaultyKit for data that are missing, contradictory or unphysical, by row; OutOfRange for a subject that cannot be
 *
 * Assumes one converter at most in a chain, rings on either side of it; close-up lenses as thin, each its seat before what it is screwed on, in the order of their names;
 * a lens whose iris nothing can reach as wide open; a lens turned round as set to infinity; focus where both ends of the subject are
 * blurred alike, and blur by the root of squares of defocus and diffraction.
 * Source: derived in [README](README.md#judging).
 */
export function searchKit(kit: readonly KitRow[], subject: KitSubject, budget: number): KitSearch {
  requireKit(kit);
  requireSubject(subject, budget);
  return searchSoundKit(kit, subject, budget);
}
