import type { Bracket } from '../internal-focus-brackets.ts';
import type { Lens } from '../lens.ts';
import type { PossibleLenses } from './known-lens.ts';

/** An answer that leans on a lens: with the usual one, and least and most over all possible ones. */
export interface AnswerSpan extends Bracket {
  /** With the usual lens; undefined where that has none. */
  readonly usual: number | undefined;
  /** Some of the possible lenses give no answer at all: no subject is sharp, or it would be inside the lens. */
  readonly isOpen: boolean;
}

/**
 * Least and most of an answer over the lenses that are possible.
 *
 * @param lenses see `possibleLenses`
 * @param answer of one lens; undefined where it has none
 * @returns undefined where none of the lenses has one
 *
 * Exact where the answer rises or falls all the way with each thing that is assumed, as distances, magnifications and f-numbers of a chain do.
 * Source: least and most at the corners of what is assumed, [README](README.md#what-is-assumed).
 */
export function spanOver(lenses: PossibleLenses, answer: (lens: Lens) => number | undefined): AnswerSpan | undefined {
  const all = lenses.extremes.map(answer);
  const found = all.filter((value) => value !== undefined);
  if (found.length === 0) return undefined;
  return {
    usual: answer(lenses.usual),
    least: Math.min(...found),
    most: Math.max(...found),
    isOpen: found.length < all.length,
  };
}
