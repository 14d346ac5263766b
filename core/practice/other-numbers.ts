import { drawProblem, type Problem } from './problem.ts';
import { nextSeed } from './seed.ts';

/** Kinds with few numbers to choose from draw the same again at times; one with a single problem would never draw another. */
const mostTries = 30;

/** The number of the next problem of the same family that asks something else, or simply the next where there is none soon. */
export function otherNumbers({ family, seed, question }: Problem): number {
  let next = seed;
  for (let tries = 0; tries < mostTries; tries++) {
    next = nextSeed(next);
    if (drawProblem(family, next).question !== question) return next;
  }
  return nextSeed(seed);
}
