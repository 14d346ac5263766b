import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'f-number' | 'converter-factor' | 'magnification' | 'pupil-magnification';

/**
 * The f-number of the cone at the sensor with a converter behind lens and rings.
 *
 * N_w = N (k + m/P)
 *
 * @param given.fNumber *N*, as marked on the lens; above 0
 * @param given.converterFactor *k*, above 1
 * @param given.magnification *m*, of the whole chain, converter included; 0 or above: 0 far away
 * @param given.pupilMagnification *P*, of the lens; above 0
 * @returns *N_w* = k N (1 + m_lens/P). A converter is never free of light loss: k = 2 alone costs two stops.
 * @throws OutOfRange for a factor not above 1, and for anything else not finite and above zero
 *
 * Assumes no ring between converter and camera; with one it holds for the factor *k′* at which the converter works there.
 * Source: the cone behind the converter is k times as slender; derived in [README](README.md#converters).
 *
 * @example effectiveFNumberWithConverter({ fNumber: 4, converterFactor: 2, magnification: 1, pupilMagnification: 0.8 }) // 13
 */
export function effectiveFNumberWithConverter({
  fNumber,
  converterFactor,
  magnification,
  pupilMagnification,
}: Named<Inputs>): number {
  requirePositive('f-number', fNumber);
  if (!(converterFactor > 1 && converterFactor < Infinity)) {
    throw new OutOfRange('converter-factor', converterFactor, 'a finite number above 1');
  }
  requireNotNegative('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return fNumber * (converterFactor + magnification / pupilMagnification);
}

export const effectiveFNumberWithConverterFormula = {
  gives: 'effective-f-number',
  from: ['f-number', 'converter-factor', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{effective-f-number} = \q{f-number}\left(\q{converter-factor} + \frac{\q{magnification}}{\q{pupil-magnification}}\right)`,
  evaluate: effectiveFNumberWithConverter,
  says: 'A converter spreads the same light over a larger picture.',
  source: 'derived in core/rig/README.md#converters',
  checkedBy: ['converter-matrices'],
  // A factor of 1 converts nothing.
  sample: { 'converter-factor': [1.1, 4] },
} as const satisfies Formula<Inputs>;
