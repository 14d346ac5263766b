/** Throws RangeError unless *count* is a whole number from *least* to *most*. *what* names it: 'samples', 'rings'. */
export function requireCount(what: string, count: number, least: number, most: number): void {
  if (Number.isInteger(count) && count >= least && count <= most) return;
  throw new RangeError(`the number of ${what} is ${count}; accepted: a whole number from ${least} to ${most}`);
}

/** Throws RangeError, in words that name it, for what no quantity of the vocabulary stands for and is no finite number. Returns it, for use inline. */
export function requireNumber(what: string, value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`the ${what} is ${value}; accepted: a finite number`);
  return value;
}
