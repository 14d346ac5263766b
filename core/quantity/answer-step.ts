import type { QuantityName } from './vocabulary.ts';

/** What is chosen among ways of doing things, by the name of the choice: `by` is `rail`. */
export type Chosen = Readonly<Record<string, string>>;

/**
 * One step from what is known to what follows: a formula, or a plan of the same shape that gives several answers at once.
 *
 * A function takes, and a plan returns, an object keyed by camel-case names. What a plan leaves out has no number.
 */
export interface Step<Gives extends QuantityName = QuantityName> {
  readonly gives: Gives | readonly Gives[];
  readonly from: readonly QuantityName[];
  readonly evaluate: (given: never, chosen: Chosen) => unknown;
  /** Where its printed line can be read; left out, wherever it gives a number. */
  readonly holds?: (given: never) => boolean;
  /** What the function calls them, where the names of `from` and `gives` carry a prefix that it does not know. */
  readonly keys?: StepKeys;
}

export interface StepKeys {
  readonly from: readonly string[];
  readonly gives: readonly string[];
}
