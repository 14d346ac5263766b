import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'focal-length' | 'close-up-power' | 'abbe-number';

/**
 * How far apart at the sensor a close-up lens of one element focuses blue and red, on a lens at infinity.
 *
 * colour spread = f² Φ/(1000 V)
 *
 * @param given.focalLength *f*, of the camera lens, mm, above 0
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @param given.abbeNumber *V*, of its glass, above 0: for the F and C lines
 * @returns mm along the axis. Over N_w it is the blur that the outermost colours have between them.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens at infinity, otherwise as for the spread on the subject.
 * Source: the spread on the subject times m²; derived in [README](README.md#colour).
 *
 * @example colourSpreadAtSensor({ focalLength: 100, closeUpPower: 4, abbeNumber: 50 }) // 0.8
 */
export function colourSpreadAtSensor({ focalLength, closeUpPower, abbeNumber }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('close-up-power', closeUpPower);
  requirePositive('abbe-number', abbeNumber);
  return (focalLength ** 2 * closeUpPower) / (metre * abbeNumber);
}

export const colourSpreadAtSensorFormula = {
  gives: 'colour-spread',
  from: ['focal-length', 'close-up-power', 'abbe-number'],
  tex: String.raw`\q{colour-spread} = \frac{\q{focal-length}^2\,\q{close-up-power}}{1000\,\q{abbe-number}}`,
  evaluate: colourSpreadAtSensor,
  says: 'On a long lens a simple close-up lens shows its colour fringes: they grow with the square of the focal length.',
  source: 'derived in core/rig/README.md#colour',
  checkedBy: ['close-up-lens-matrices', 'colour-of-a-single-lens'],
} as const satisfies Formula<Inputs>;
