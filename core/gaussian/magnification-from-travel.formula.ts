import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focus-travel' | 'focal-length';

/**
 * What a lens gives that has been moved out as a whole from its infinity setting.
 *
 * m = q/f
 *
 * @param given.focusTravel *q*, from the infinity setting, mm, 0 or above
 * @param given.focalLength *f*, mm, above 0; a lens moved as a whole keeps it
 * @returns *m*, 0 at infinity, 1 after one focal length of travel
 * @throws OutOfRange for a negative travel, a focal length not above zero, or anything not finite
 *
 * Assumes Gaussian optics in air and a lens whose glasses keep their places to each other: where groups move inside, neither the travel
 * of one of them nor the length of the barrel is *q*.
 * Source: Newton's x'/f with x' the distance from F′ to the sensor, derived in [README](README.md#newton).
 *
 * @example magnificationFromTravel({ focusTravel: 7.5, focalLength: 50 }) // 0.15
 */
export function magnificationFromTravel({ focusTravel, focalLength }: Named<Inputs>): number {
  requireNotNegative('focus-travel', focusTravel);
  requirePositive('focal-length', focalLength);
  return focusTravel / focalLength;
}

export const magnificationFromTravelFormula = {
  gives: 'magnification',
  from: ['focus-travel', 'focal-length'],
  tex: String.raw`\q{magnification} = \frac{\q{focus-travel}}{\q{focal-length}}`,
  evaluate: magnificationFromTravel,
  says: 'Count the travel in focal lengths: that is the magnification, and one focal length of travel gives life size.',
  source: 'Newton’s form of the lens equation, derived in core/gaussian/README.md#newton',
  checkedBy: ['focusing-in-textbooks'],
} as const satisfies Formula<Inputs>;
