import type { Range } from './expected.ts';
import type { QuantityName } from './vocabulary.ts';

/** `focal-length` becomes `focalLength`, `main-lens.f-number` becomes `mainLensFNumber`. */
export type CamelCase<S extends string> = S extends `${infer Part}.${infer Id}`
  ? `${CamelCase<Part>}${Capitalize<CamelCase<Id>>}`
  : S extends `${infer Head}-${infer Tail}`
    ? `${Head}${Capitalize<CamelCase<Tail>>}`
    : S;

/** The quantities *Ids* as a function takes them: an object keyed by their camel-case names, base units. */
export type Named<Ids extends string> = { [Id in Ids as CamelCase<Id>]: number };

/**
 * A formula as a page shows it and as it runs: one file holds both.
 *
 * `tex` writes every quantity as `\q{id}`. Pages render it twice from the same text, once with the letters of the
 * vocabulary and once with the reader's numbers; a test replaces each `\q{id}` by a plain name, evaluates
 * the right-hand side with an independent algebra library and compares with `evaluate`.
 */
export interface Formula<Ids extends QuantityName = QuantityName> {
  /** What stands on the left-hand side. */
  readonly gives: QuantityName;
  /** What stands on the right-hand side, each once. */
  readonly from: readonly Ids[];
  /** One equation, `\q{gives} = ...`; plain KaTeX but for `\q{id}`. */
  readonly tex: string;
  /** The function that runs. */
  readonly evaluate: (given: Named<Ids>) => number;
  /** One line of plain words: what the formula says. */
  readonly says: string;
  /** Where it is printed: book, clause or paper. */
  readonly source: string;
  /** Folders of the outside checks that run it, below `tests/reference/`, in alphabetical order; a test proves the list. */
  readonly checkedBy: readonly string[];
  /**
   * Ranges for random checks where the vocabulary's own ranges would leave the formula's domain,
   * e.g. a pupil larger than the blur.
   */
  readonly sample?: Partial<Record<Ids, readonly [least: number, most: number]>>;
  /**
   * A number of the equation with more digits than a page needs, written out in `tex`: what is given goes with this *power* of its *value*. A page prints
   * three figures of it, and more only where the line takes them.
   */
  readonly constant?: { readonly value: number; readonly power: number };
  /** The length that the equation takes in metres, `\q{id}/1000` in `tex`: pages show it in metres, without the 1000. */
  readonly metres?: Ids;
  /** Where the equation says what the function answers, if that is not wherever it does: no page prints it elsewhere. */
  readonly holds?: (given: Named<Ids>) => boolean;
  /**
   * For a letter in which the left side rises and falls more often than a look around would find: where it turns within a
   * range, in any order. `solveFor` finds the few turns of any other letter by itself.
   */
  readonly turns?: { readonly [Id in Ids]?: (given: never, range: Range) => readonly number[] };
}

/** `focal-length` to `focalLength`; the run-time twin of {@link CamelCase}. */
export function camelCase(id: string): string {
  return id.replace(/[-.](\w)/g, (_, letter: string) => letter.toUpperCase());
}

/** Picks a formula's inputs out of values keyed by id and evaluates it. Throws what the function throws. */
export function evaluateFormula<Ids extends QuantityName>(
  formula: Formula<Ids>,
  values: Readonly<Record<Ids, number>>,
): number {
  const given = Object.fromEntries(formula.from.map((id) => [camelCase(id), values[id]]));
  return formula.evaluate(given as Named<Ids>);
}
