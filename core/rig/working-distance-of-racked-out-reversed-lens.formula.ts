import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'reversed-lens.register-distance' | 'focus-travel' | 'focal-length' | 'magnification' | 'rear-protrusion';

/**
 * The free space in front of a lens turned round: its flange moved towards the subject by the focus ring, and what stands out behind the flange counted.
 *
 * w = R − q + f/m − rear protrusion
 *
 * @param given.reversedLensRegisterDistance *R*, of the lens's own mount, mm, above 0
 * @param given.focusTravel *q*, how far the lens stands out from its infinity setting, moved as a whole, mm, 0 or above
 * @param given.focalLength *f*, mm, above 0
 * @param given.magnification *m*, above 0
 * @param given.rearProtrusion what stands out behind the flange at that setting, now foremost, mm, 0 or above; glass goes with the lens and draws back by *q*
 * @returns *w*, mm, from whatever stands foremost; below 0 where the sharp plane lies inside the lens.
 * @throws OutOfRange for anything not finite and in range
 *
 * Assumes a lens moved as a whole, its rim with its glass: turning its ring then moves only the flange, and leaves *m*.
 * Source: s = f (1 + 1/m) from a plane that stands f + q − R before the flange; derived in [README](README.md#a-lens-turned-round).
 *
 * @example workingDistanceOfRackedOutReversedLens({ reversedLensRegisterDistance: 44, focusTravel: 3, focalLength: 28, magnification: 2, rearProtrusion: 11 }) // 44
 */
export function workingDistanceOfRackedOutReversedLens({
  reversedLensRegisterDistance,
  focusTravel,
  focalLength,
  magnification,
  rearProtrusion,
}: Named<Inputs>): number {
  requirePositive('reversed-lens.register-distance', reversedLensRegisterDistance);
  requireNotNegative('focus-travel', focusTravel);
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  requireNotNegative('rear-protrusion', rearProtrusion);
  return reversedLensRegisterDistance - focusTravel + focalLength / magnification - rearProtrusion;
}

export const workingDistanceOfRackedOutReversedLensFormula = {
  gives: 'working-distance',
  from: ['reversed-lens.register-distance', 'focus-travel', 'focal-length', 'magnification', 'rear-protrusion'],
  tex: String.raw`\q{working-distance} = \q{reversed-lens.register-distance} - \q{focus-travel} + \frac{\q{focal-length}}{\q{magnification}} - \q{rear-protrusion}`,
  evaluate: workingDistanceOfRackedOutReversedLens,
  says: 'Reversed, a lens is sharp its register and f/m in front of its flange; focus ring and rear glass reach into that room.',
  source: 'derived in core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-surface-by-surface'],
} as const satisfies Formula<Inputs>;
