import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'converter-factor' | 'focus-magnification' | 'extension' | 'focal-length';

/**
 * What a lens gives on rings with a converter between the rings and the camera.
 *
 * m = k (m₀ + e/f)
 *
 * @param given.converterFactor *k*, above 1
 * @param given.focusMagnification *m₀*, by the lens's own focusing, 0 or above
 * @param given.extension *e*, rings between lens and converter, mm, 0 or above
 * @param given.focalLength *f*, of the lens at that setting, mm, above 0
 * @returns *m*, 0 for a lens at infinity without rings. A ring on the other side of the converter does something else.
 * @throws OutOfRange for values out of range, and a factor not above 1
 *
 * Assumes rings between lens and converter, none behind it.
 * Source: the converter enlarges the picture that the lens makes; derived in [README](README.md#converters).
 *
 * @example magnificationWithConverter({ converterFactor: 2, focusMagnification: 0.1, extension: 25, focalLength: 50 }) // 1.2
 */
export function magnificationWithConverter({
  converterFactor,
  focusMagnification,
  extension,
  focalLength,
}: Named<Inputs>): number {
  if (!(converterFactor > 1 && converterFactor < Infinity)) {
    throw new OutOfRange('converter-factor', converterFactor, 'a finite number above 1');
  }
  requireNotNegative('focus-magnification', focusMagnification);
  requireNotNegative('extension', extension);
  requirePositive('focal-length', focalLength);
  return converterFactor * (focusMagnification + extension / focalLength);
}

export const magnificationWithConverterFormula = {
  gives: 'magnification',
  from: ['converter-factor', 'focus-magnification', 'extension', 'focal-length'],
  tex: String.raw`\q{magnification} = \q{converter-factor}\left(\q{focus-magnification} + \frac{\q{extension}}{\q{focal-length}}\right)`,
  evaluate: magnificationWithConverter,
  says: 'A converter enlarges whatever picture lens and rings have made.',
  source: 'derived in core/rig/README.md#converters',
  checkedBy: ['converter-matrices'],
  // A factor of 1 converts nothing.
  sample: { 'converter-factor': [1.1, 4] },
} as const satisfies Formula<Inputs>;
