/** Throws RangeError unless *count* is a whole number from *least* to *most*. *what* names it: 'samples', 'rings'. */
export function requireCount(what: string, count: number, least: number, most: number): void {
  if (Number.isInteger(count) && count >= least && count <= most) return;
  throw new RangeError(`the number of ${what} is ${count}; accepted: a whole number from ${least} to ${most}`);
}
