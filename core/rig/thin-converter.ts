import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/** A converter as one thin diverging lens. */
export interface ThinConverter {
  /** mm, negative. */
  readonly focalLength: number;
  /** From the thin lens to where the picture would stand without it, mm. */
  readonly objectDistance: number;
}

/**
 * The thin lens that does what is printed on a converter.
 *
 * a = ℓ/(k − 1), f_c = −k a/(k − 1)
 *
 * @param given.converterFactor *k*, above 1
 * @param given.converterLength *ℓ*, flange to flange, mm, above 0
 * @returns its focal length *f_c*, below 0, and how far *a* before the original image it stands. The picture moves back by *ℓ*
 *   and grows *k* times.
 * @throws OutOfRange for a factor not above 1 or a length not above 0
 *
 * Assumes one thin lens; real converters have several elements, but stand about there.
 * Source: the lens equation with a virtual object; derived in [README](README.md#converters).
 *
 * @example thinConverter({ converterFactor: 2, converterLength: 40 }).focalLength // -80
 */
export function thinConverter({
  converterFactor,
  converterLength,
}: Named<'converter-factor' | 'converter-length'>): ThinConverter {
  if (!(converterFactor > 1 && converterFactor < Infinity)) {
    throw new OutOfRange('converter-factor', converterFactor, 'a finite number above 1');
  }
  requirePositive('converter-length', converterLength);
  const objectDistance = converterLength / (converterFactor - 1);
  return { focalLength: (-converterFactor * objectDistance) / (converterFactor - 1), objectDistance };
}
