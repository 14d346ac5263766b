/** The greatest number a problem may have: six figures can be read out in a room. */
export const mostSeed = 999_999;

/** True for a number a problem may have: whole, from 1 to {@link mostSeed}. */
export function isSeed(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) >= 1 && (value as number) <= mostSeed;
}

/** Throws RangeError for a number that no problem may have. */
export function requireSeed(seed: number): void {
  if (!isSeed(seed))
    throw new RangeError(`a problem's number is ${seed}; accepted: whole numbers from 1 to ${mostSeed}`);
}

/** The number after *seed*; after the last comes the first. Throws RangeError for a number that no problem may have. */
export function nextSeed(seed: number): number {
  requireSeed(seed);
  return (seed % mostSeed) + 1;
}
