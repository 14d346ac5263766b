import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';

/** Numbers such as fields and addresses hold: sensible ones, any size that a slip of units makes, and garbage. */
export const anyNumber = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0.01, max: 30, noNaN: true }) },
  { weight: 1, arbitrary: fc.double({ min: -1e30, max: 1e30, noNaN: true }).map((x) => (Math.abs(x) < 1e-30 ? 0 : x)) },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, NaN, Infinity, -Infinity, -1, 1e-30, 1e30) },
);

/** The same about numbers from 0 to 1. */
export const anyShare = fc.oneof({ weight: 8, arbitrary: fc.double({ min: 1e-6, max: 1, noNaN: true }) }, anyNumber);

/** Every number in an answer, however deep. */
function numbersIn(answer: unknown): number[] {
  if (typeof answer === 'number') return [answer];
  return typeof answer === 'object' && answer !== null ? Object.values(answer).flatMap(numbersIn) : [];
}

/** Holds each function to finite numbers or a refusal by name, whatever it is given, in so many *runs*. */
export function describeAnyNumber<Given>(
  functions: Readonly<Record<string, (given: Given) => unknown>>,
  given: fc.Arbitrary<Given>,
  runs = 200,
): void {
  describe.each(Object.keys(functions))('%s, whatever numbers come', (name) => {
    it('answers with finite numbers or refuses with OutOfRange', () => {
      let answered = 0;
      fc.assert(
        fc.property(given, (values) => {
          try {
            const numbers = numbersIn(functions[name]?.(values));
            answered++;
            for (const number of numbers) expect(Number.isFinite(number), JSON.stringify(values)).toBe(true);
          } catch (error) {
            if (!(error instanceof OutOfRange)) throw error;
          }
        }),
        { seed: 7, numRuns: runs, endOnFailure: true },
      );
      expect(answered).toBeGreaterThan(10);
    }, 120_000);
  });
}
