/**
 * Where a function of one variable crosses zero between two places of opposite sign, by halving. For tests, which
 * want a method that cannot go astray more than a fast one.
 *
 * @throws Error where both ends have the same sign: there is then no crossing to be sure of
 */
export function rootBetween(low: number, high: number, of: (x: number) => number): number {
  const sign = Math.sign(of(low));
  if (sign * Math.sign(of(high)) > 0) throw new Error(`no change of sign from ${low} to ${high}`);
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (Math.sign(of(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
