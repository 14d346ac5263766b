import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'colour-spread' | 'effective-f-number';

/**
 * How widely blue is smeared on the sensor where red is sharp.
 *
 * colour blur = m² × colour spread/N_w
 *
 * @param given.magnification *m*, above 0
 * @param given.colourSpread in front of the lens, between the sharp planes of blue and red, mm, 0 or above
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above 0
 * @returns mm on the sensor: the diameter of the F line's disc in the focus of the C line. Halfway between the two foci both have half of it.
 * @throws OutOfRange for a negative spread, and for anything else not finite and above zero
 *
 * First order, as the spread is. Assumes a perfect lens but for that spread; diffraction is added to it.
 * Source: lengths along the axis are enlarged by m², and a cone is as wide as its length over N_w; derived in [README](README.md#colour).
 *
 * @example colourBlur({ magnification: 0.5, colourSpread: 4, effectiveFNumber: 8 }) // 0.125
 */
export function colourBlur({ magnification, colourSpread, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requireNotNegative('colour-spread', colourSpread);
  requirePositive('effective-f-number', effectiveFNumber);
  return (magnification ** 2 * colourSpread) / effectiveFNumber;
}

export const colourBlurFormula = {
  gives: 'colour-blur',
  from: ['magnification', 'colour-spread', 'effective-f-number'],
  tex: String.raw`\q{colour-blur} = \frac{\q{magnification}^2 \times \q{colour-spread}}{\q{effective-f-number}}`,
  evaluate: colourBlur,
  says: 'The spread comes back at the sensor enlarged by the square of the magnification; stopping down narrows its cone.',
  source: 'derived in core/rig/README.md#colour',
  checkedBy: ['blue-and-red-by-matrices', 'colour-of-telescope-glasses'],
} as const satisfies Formula<Inputs>;
