import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'extension' | 'converter-factor' | 'focal-length';

/**
 * What a ring between converter and camera gives on a lens at infinity.
 *
 * m = e/(k f)
 *
 * @param given.extension *e*, between converter and camera, mm, 0 or above
 * @param given.converterFactor *k*, above 1
 * @param given.focalLength *f*, of the lens, mm, above 0
 * @returns *m*, k² times less than with the same ring in front of the converter.
 * @throws OutOfRange for values out of range, and a factor not above 1
 *
 * Assumes a lens at infinity and no ring between it and the converter.
 * Source: Newton's form with the focal length k f of lens and converter; derived in [README](README.md#converters).
 *
 * @example magnificationWithRingBehindConverter({ extension: 25, converterFactor: 2, focalLength: 50 }) // 0.25
 */
export function magnificationWithRingBehindConverter({
  extension,
  converterFactor,
  focalLength,
}: Named<Inputs>): number {
  requireNotNegative('extension', extension);
  if (!(converterFactor > 1 && converterFactor < Infinity)) {
    throw new OutOfRange('converter-factor', converterFactor, 'a finite number above 1');
  }
  requirePositive('focal-length', focalLength);
  return extension / (converterFactor * focalLength);
}

export const magnificationWithRingBehindConverterFormula = {
  gives: 'magnification',
  from: ['extension', 'converter-factor', 'focal-length'],
  tex: String.raw`\q{magnification} = \frac{\q{extension}}{\q{converter-factor}\,\q{focal-length}}`,
  evaluate: magnificationWithRingBehindConverter,
  says: 'Behind a converter the lens is k times as long, and longer lenses need more ring for the same gain.',
  source: 'derived in core/rig/README.md#converters',
  checkedBy: ['converter-matrices'],
  // A factor of 1 converts nothing.
  sample: { 'converter-factor': [1.1, 4] },
} as const satisfies Formula<Inputs>;
