import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'converter-factor' | 'rear-ring.extension' | 'converter-length';

/**
 * How many times a converter enlarges when a ring stands between it and the camera.
 *
 * k′ = k + e (k − 1)²/(k ℓ)
 *
 * @param given.converterFactor *k*, as engraved, above 1
 * @param given.rearRingExtension *e*, between converter and camera, mm, 0 or above
 * @param given.converterLength *ℓ*, of the converter from mount to mount, mm, above 0
 * @returns *k′*, of the image that the lens makes: at least *k*, for the image is thrown farther
 * @throws OutOfRange for values out of range, and a factor not above 1
 *
 * Assumes a converter taken as one thin lens. Source: derived in [README](README.md#converters).
 *
 * @example converterFactorWithRingBehind({ converterFactor: 2, rearRingExtension: 36, converterLength: 40 }) // 2.45
 */
export function converterFactorWithRingBehind({
  converterFactor,
  rearRingExtension,
  converterLength,
}: Named<Inputs>): number {
  if (!(converterFactor > 1 && converterFactor < Infinity)) {
    throw new OutOfRange('converter-factor', converterFactor, 'a finite number above 1');
  }
  requireNotNegative('rear-ring.extension', rearRingExtension);
  requirePositive('converter-length', converterLength);
  return converterFactor + (rearRingExtension * (converterFactor - 1) ** 2) / (converterFactor * converterLength);
}

export const converterFactorWithRingBehindFormula = {
  gives: 'working.converter-factor',
  from: ['converter-factor', 'rear-ring.extension', 'converter-length'],
  tex: String.raw`\q{working.converter-factor} = \q{converter-factor} + \frac{\q{rear-ring.extension}\left(\q{converter-factor} - 1\right)^2}{\q{converter-factor}\,\q{converter-length}}`,
  evaluate: converterFactorWithRingBehind,
  says: 'A ring behind a converter throws its image farther, so that it enlarges more than is engraved.',
  source: 'derived in core/rig/README.md#converters',
  checkedBy: ['converter-matrices'],
  // A factor of 1 converts nothing.
  sample: { 'converter-factor': [1.1, 4] },
} as const satisfies Formula<Inputs>;
