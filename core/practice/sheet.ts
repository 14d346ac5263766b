import type { ProblemFamily } from './family.ts';
import { drawProblem, type Problem } from './problem.ts';
import { mostSeed, nextSeed } from './seed.ts';

/** So many problems stand on a printed sheet. */
export const problemsOnSheet = 8;

/** So many seeds are tried for a question that does not stand on the sheet yet. */
const tries = 60;

/**
 * The eight problems of the sheet with the number *seed*: of each kind in turn, none twice, nor with the same numbers in another order while a
 * kind has others; the same in every browser. Sheets with successive numbers
 * go on where the one before ended, with the next kind and the next numbers.
 *
 * Fewer than eight only where *families* have no more different questions.
 *
 * @param families at least one
 * @param seed whole number from 1 to 999999
 * @throws RangeError for a seed that is not
 */
export function drawSheet(families: readonly ProblemFamily[], seed: number): readonly Problem[] {
  const kinds = families.length;
  const first = (seed - 1) * problemsOnSheet;
  const problems: Problem[] = [];
  /** For each kind where its next search begins. */
  const next = families.map((_, index) => (Math.ceil((first - index) / kinds) % mostSeed) + 1);
  const isNew = ({ question }: Problem) => problems.every((other) => other.question !== question);
  const hasNewNumbers = (problem: Problem) =>
    problems.every((other) => other.family !== problem.family || numbersOf(other) !== numbersOf(problem));
  let [turn, passed] = [first, 0];
  while (problems.length < problemsOnSheet && passed < kinds) {
    const kind = turn++ % kinds;
    let [found, better]: (Problem | undefined)[] = [];
    for (let tried = 0, at = next[kind]!; tried < tries && better === undefined; tried++, at = nextSeed(at)) {
      const problem = drawProblem(families[kind]!, at);
      if (!isNew(problem)) continue;
      if (hasNewNumbers(problem)) better = problem;
      found ??= problem;
    }
    found = better ?? found;
    if (found) next[kind] = nextSeed(found.seed);
    passed = found ? 0 : passed + 1;
    if (found) problems.push(found);
  }
  return problems;
}

/** The numbers of a question, whatever order they stand in. */
export const numbersOf = ({ question }: Pick<Problem, 'question'>): string =>
  (question.match(/\d[\d.,/:]*/g) ?? []).sort().join(' ');
