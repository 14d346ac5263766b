import { drawProblem, type Problem } from './problem.ts';
import { nextSeed } from './seed.ts';

/** Kinds with few numbers to choose from draw the same again at times; one with a single problem never draws another. */
const mostTries = 30;

/** The number of the next problem of the same family that asks something else; where there is none soon, of one that asks the same. */
export function otherNumbers({ family, seed, question }: Problem): number {
  let next = nextSeed(seed);
  for (let tries = 0; tries < mostTries && drawProblem(family, next).question === question; tries++)
    next = nextSeed(next);
  return next;
}
