/** How far a number may lie from the one expected, and why that far and no farther. */
export type Tolerance = { because: string } & ({ relative: number } | { absolute: number });

/**
 * An asymmetric matcher for `toEqual`: a number within *tolerance* of *expected*.
 *
 * `expect(x).toEqual(closeTo(5.36655, { relative: 1e-6, because: 'reference printed to six figures' }))`
 */
export function closeTo(expected: number, tolerance: Tolerance) {
  const margin = 'relative' in tolerance ? Math.abs(expected) * tolerance.relative : tolerance.absolute;
  return {
    asymmetricMatch: (actual: unknown): boolean =>
      typeof actual === 'number' &&
      (actual === expected || (margin < Infinity && Math.abs(actual - expected) <= margin)),
    toString: () => `${expected} ± ${margin} (${tolerance.because})`,
    toAsymmetricMatcher: () => `${expected} ± ${margin} (${tolerance.because})`,
    getExpectedType: () => 'number',
    $$typeof: Symbol.for('jest.asymmetricMatcher'),
  };
}
