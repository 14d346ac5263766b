import { camelCase } from '#core/quantity/formula.ts';
import type { Range } from '#core/quantity/expected.ts';
import { nearestRoot, solveFor, type Question, type Solvable } from '#core/quantity/solve.ts';
import { orUndefined } from '#core/quantity/solve-places.ts';
import { NoRoot } from '#core/quantity/solve-refusals.ts';

type LetterOf<F extends Solvable> = F['from'][number] | F['gives'];

/**
 * What a hand means that pulls what a formula gives to some value: the value of the letter asked for with which it is that, of several the one
 * nearest to *now*. Where none in the range does, the end of the range that comes nearest: a handle stops there.
 */
export function pulledTo<F extends Solvable>(
  formula: F,
  question: Question<LetterOf<F>> & { readonly range: Range },
  now: number,
): number {
  try {
    return nearestRoot(solveFor(formula, question), now);
  } catch (error) {
    if (!(error instanceof NoRoot)) throw error;
    return nearestEnd(formula, question as Question & { readonly range: Range });
  }
}

function nearestEnd(formula: Solvable, { ask, given, range }: Question & { readonly range: Range }): number {
  const known = Object.fromEntries(Object.entries(given).map(([id, value]) => [camelCase(id), value]));
  const at = orUndefined((value) => formula.evaluate({ ...known, [camelCase(ask)]: value } as never));
  const off = (end: number) => Math.abs((at(end) ?? Infinity) - given[formula.gives]!);
  return off(range.least) < off(range.most) ? range.least : range.most;
}
