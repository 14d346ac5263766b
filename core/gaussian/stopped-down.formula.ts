import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'f-number' | 'max-aperture';

/**
 * By how many stops a lens is closed, from its maximum aperture to the one set.
 *
 * 2 log2(N/N_0)
 *
 * @param given.fNumber *N*, as set, above 0
 * @param given.maxAperture *N_0*, its smallest f-number, above 0
 * @returns stops, each half the light; 0 wide open, negative for a number that the lens does not reach
 * @throws OutOfRange for anything not finite and above zero
 *
 * Marks are rounded: f/11 stands for 11.3, so counts from marks come out a few hundredths beside whole ones.
 * Source: the light through an opening goes as its area, (f/N)². See [README](README.md#light).
 *
 * @example stoppedDown({ fNumber: 8, maxAperture: 2 }) // 4
 */
export function stoppedDown({ fNumber, maxAperture }: Named<Inputs>): number {
  requirePositive('f-number', fNumber);
  requirePositive('max-aperture', maxAperture);
  return 2 * Math.log2(fNumber / maxAperture);
}

export const stoppedDownFormula = {
  gives: 'stopped-down',
  from: ['f-number', 'max-aperture'],
  tex: String.raw`\q{stopped-down} = 2\log_2\frac{\q{f-number}}{\q{max-aperture}}`,
  evaluate: stoppedDown,
  says: 'Each doubling of the f-number is two stops: half the width is a quarter of the area.',
  source: 'a stop is half the light, and the light goes as the area of the opening',
  checkedBy: ['stops-in-manuals'],
} as const satisfies Formula<Inputs>;
