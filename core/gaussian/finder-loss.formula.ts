import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'max-aperture';

/**
 * How much darker an optical finder is, with the aperture closed, than with the lens wide open and set to infinity.
 *
 * finder loss = 2 log₂(N_w/N₀)
 *
 * @param given.effectiveFNumber *N_w*, with the aperture closed to the mark in use, above 0
 * @param given.maxAperture *N₀*, the smallest f-number of the lens, above 0
 * @returns stops; what the eye sees of them is less, for it adapts
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a screen that shows all of the cone: bright screens waste what is wider than about f/2.8 (common practice).
 * Source: a stop is a factor of two in light. See [README](README.md#pupils).
 *
 * @example finderLoss({ effectiveFNumber: 32, maxAperture: 2 }) // 8
 */
export function finderLoss({ effectiveFNumber, maxAperture }: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('max-aperture', maxAperture);
  return 2 * Math.log2(effectiveFNumber / maxAperture);
}

export const finderLossFormula = {
  gives: 'finder-loss',
  from: ['effective-f-number', 'max-aperture'],
  tex: String.raw`\q{finder-loss} = 2\log_2\frac{\q{effective-f-number}}{\q{max-aperture}}`,
  evaluate: finderLoss,
  says: 'An f/2.8 lens closed to f/16 at life size leaves a finder a 128th of its light.',
  source: 'a stop is a factor of two in light, and illuminance goes as one over the square of the f-number',
  checkedBy: ['hand-meters-close-up'],
} as const satisfies Formula<Inputs>;
