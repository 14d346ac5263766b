import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'reversed-lens.register-distance' | 'focal-length' | 'magnification';

/**
 * The free space in front of a lens turned round, from its own flange, which now faces the subject.
 *
 * w = R + f/m
 *
 * @param given.reversedLensRegisterDistance *R*, of the lens's own mount, mm, above 0
 * @param given.focalLength *f*, mm, above 0
 * @param given.magnification *m*, above 0
 * @returns *w*, mm, from the flange. Never less than the register; what stands out behind the flange takes its length away.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens at its infinity setting. Racked out by q it is R − q + f/m.
 * Source: s = f (1 + 1/m) from a plane that stands f − R beyond the flange; derived in [README](README.md#a-lens-turned-round).
 *
 * @example workingDistanceOfReversedLens({ reversedLensRegisterDistance: 44, focalLength: 28, magnification: 2 }) // 58
 */
export function workingDistanceOfReversedLens({
  reversedLensRegisterDistance,
  focalLength,
  magnification,
}: Named<Inputs>): number {
  requirePositive('reversed-lens.register-distance', reversedLensRegisterDistance);
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  return reversedLensRegisterDistance + focalLength / magnification;
}

export const workingDistanceOfReversedLensFormula = {
  gives: 'working-distance',
  from: ['reversed-lens.register-distance', 'focal-length', 'magnification'],
  tex: String.raw`\q{working-distance} = \q{reversed-lens.register-distance} + \frac{\q{focal-length}}{\q{magnification}}`,
  evaluate: workingDistanceOfReversedLens,
  says: 'Reversed, a lens leaves at least its own register distance between its mount and the subject, however high the magnification.',
  source: 'derived in core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-lens-matrices'],
} as const satisfies Formula<Inputs>;
