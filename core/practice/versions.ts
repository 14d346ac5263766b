import { seedFromText } from '#core/chance/seed-from-text.ts';
import type { ProblemFamily } from './family.ts';
import { drawProblem, type Problem } from './problem.ts';
import { drawFrom } from './random.ts';
import { isSeed, mostSeed, nextSeed } from './seed.ts';
import { numbersOf } from './sheet.ts';

/** One kind of problem that a sheet may ask. */
export interface SheetKind {
  /** The lesson it belongs to. */
  readonly lesson: string;
  readonly family: ProblemFamily;
}

/** A problem on a sheet, with its lesson. */
export interface SheetProblem {
  readonly lesson: string;
  readonly problem: Problem;
}

/** So many seeds are tried for a question that is on none of the versions yet. */
const tries = 60;

/**
 * Sheets for neighbours in a room: every version asks the same kinds in the same order, with other numbers.
 *
 * Lessons take turns, in an order that *seed* shuffles; each gives its kinds one after the other, and begins again when all have been asked. No version asks
 * a question twice, nor one that another version asks while the kind has others. Later versions leave earlier ones as they are.
 *
 * @param kinds at least one
 * @param seed whole number from 1 to 999999; the same seed gives the same sheets in every browser
 * @param count problems on each; fewer come back only where *kinds* have no more different questions
 * @param versions so many sheets come back
 * @throws RangeError for a seed that is not
 */
export function drawVersions(
  kinds: readonly SheetKind[],
  { seed, count, versions }: { readonly seed: number; readonly count: number; readonly versions: number },
): readonly (readonly SheetProblem[])[] {
  if (!isSeed(seed)) throw new RangeError(`a sheet's number is ${seed}; accepted: whole numbers from 1 to ${mostSeed}`);
  const order = inTurn(kinds, seed);
  const next = order.map(({ lesson, family }) => (seedFromText(`${lesson}/${family.id} ${seed}`) % mostSeed) + 1);
  const elsewhere: Problem[] = [];
  return Array.from({ length: versions }, () => {
    const sheet: SheetProblem[] = [];
    for (let [turn, passed] = [0, 0]; sheet.length < count && passed < order.length; turn++) {
      const at = turn % order.length;
      const { lesson, family } = order[at]!;
      const own = sheet.map(({ problem }) => problem).filter((one) => one.family === family);
      const problem = newProblem(family, next[at]!, own, elsewhere);
      passed = problem ? 0 : passed + 1;
      if (!problem) continue;
      next[at] = nextSeed(problem.seed);
      sheet.push({ lesson, problem });
    }
    elsewhere.push(...sheet.map(({ problem }) => problem));
    return sheet;
  });
}

/** The best of the next problems of *family*: none that is on its own sheet, best one that is on no other, nor has their numbers in another order. */
function newProblem(
  family: ProblemFamily,
  from: number,
  own: readonly Problem[],
  elsewhere: readonly Problem[],
): Problem | undefined {
  const others = elsewhere.filter((one) => one.family === family);
  const isAsked = ({ question }: Problem, by: readonly Problem[]) => by.some((one) => one.question === question);
  const hasNumbers = (problem: Problem, by: readonly Problem[]) =>
    by.some((one) => numbersOf(one) === numbersOf(problem));
  let [best, least]: [Problem | undefined, number] = [undefined, Infinity];
  for (let tried = 0, at = from; tried < tries && least > 0; tried++, at = nextSeed(at)) {
    const problem = drawProblem(family, at);
    if (isAsked(problem, own)) continue;
    const faults =
      2 * Number(isAsked(problem, others)) + Number(hasNumbers(problem, own) || hasNumbers(problem, others));
    if (faults < least) [best, least] = [problem, faults];
  }
  return best;
}

/** Kinds in the order in which a sheet asks them: lessons in turn, lessons and the kinds of each shuffled. */
function inTurn(kinds: readonly SheetKind[], seed: number): readonly SheetKind[] {
  const draw = drawFrom(seedFromText(`sheet ${seed}`));
  const shuffled = <T>(list: readonly T[]): readonly T[] => {
    const rest = [...list];
    return list.map(() => rest.splice(draw.between(0, rest.length - 1, 1), 1)[0]!);
  };
  const lessons = shuffled([...new Set(kinds.map(({ lesson }) => lesson))]);
  const byLesson = lessons.map((name) => shuffled(kinds.filter(({ lesson }) => lesson === name)));
  const longest = Math.max(...byLesson.map(({ length }) => length));
  return Array.from({ length: longest }, (_, round) => byLesson.flatMap((own) => own.slice(round, round + 1))).flat();
}
