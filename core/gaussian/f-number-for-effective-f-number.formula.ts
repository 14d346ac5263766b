import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'magnification' | 'pupil-magnification';

/**
 * The f-number to set so that the lens works at a wanted one.
 *
 * N = N_w/(1 + m/P)
 *
 * @param given.effectiveFNumber *N_w*, wanted at the sensor, above 0
 * @param given.magnification *m*, reached by focusing or rings, 0 or above
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter, above 0
 * @returns *N*, as marked. Below the lens's maximum aperture it cannot be set.
 * @throws OutOfRange for a magnification below zero, the others not above zero, or anything not finite
 *
 * Assumes a lens that keeps *f* and *D* while focusing, the right way round.
 * Source: the effective f-number solved for *N*; see [README](README.md#pupils).
 *
 * @example fNumberForEffectiveFNumber({ effectiveFNumber: 16, magnification: 1, pupilMagnification: 1 }) // 8
 */
export function fNumberForEffectiveFNumber({
  effectiveFNumber,
  magnification,
  pupilMagnification,
}: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requireNotNegative('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return effectiveFNumber / (1 + magnification / pupilMagnification);
}

export const fNumberForEffectiveFNumberFormula = {
  gives: 'f-number',
  from: ['effective-f-number', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{f-number} = \frac{\q{effective-f-number}}{1 + \frac{\q{magnification}}{\q{pupil-magnification}}}`,
  evaluate: fNumberForEffectiveFNumber,
  says: 'For the cone of f/16 at life size a symmetrical lens is set to f/8.',
  source: 'the effective f-number solved for the mark; derived in core/gaussian/README.md#pupils',
  checkedBy: ['hand-meters-close-up'],
} as const satisfies Formula<Inputs>;
