import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs =
  | 'working.converter-factor'
  | 'focus-magnification'
  | 'front-ring.extension'
  | 'focal-length'
  | 'rear-ring.extension'
  | 'converter-factor';

/**
 * What a lens gives with a converter that has rings on both sides.
 *
 * m = k′ (m₀ + e₁/f) + e₂/(k f)
 *
 * @param given.workingConverterFactor *k′*, with the ring behind it, above 1; see `converterFactorWithRingBehind`
 * @param given.focusMagnification *m₀*, by the lens's own focusing, 0 or above
 * @param given.frontRingExtension *e₁*, between lens and converter, mm, 0 or above
 * @param given.focalLength *f*, of the lens at that setting, mm, above 0
 * @param given.rearRingExtension *e₂*, between converter and camera, mm, 0 or above
 * @param given.converterFactor *k*, as engraved, above 1
 * @returns *m*, 0 for a lens at infinity without rings
 * @throws OutOfRange for values out of range, and a factor not above 1
 *
 * Assumes a converter taken as one thin lens. Source: derived in [README](README.md#converters).
 *
 * @example magnificationWithRingsAroundConverter({ workingConverterFactor: 2.45, focusMagnification: 1, frontRingExtension: 0, focalLength: 72, rearRingExtension: 36, converterFactor: 2 }) // 2.7
 */
export function magnificationWithRingsAroundConverter({
  workingConverterFactor,
  focusMagnification,
  frontRingExtension,
  focalLength,
  rearRingExtension,
  converterFactor,
}: Named<Inputs>): number {
  requireFactor('working.converter-factor', workingConverterFactor);
  requireNotNegative('focus-magnification', focusMagnification);
  requireNotNegative('front-ring.extension', frontRingExtension);
  requirePositive('focal-length', focalLength);
  requireNotNegative('rear-ring.extension', rearRingExtension);
  requireFactor('converter-factor', converterFactor);
  return (
    workingConverterFactor * (focusMagnification + frontRingExtension / focalLength) +
    rearRingExtension / (converterFactor * focalLength)
  );
}

function requireFactor(name: 'converter-factor' | 'working.converter-factor', factor: number): void {
  if (!(factor > 1 && factor < Infinity)) throw new OutOfRange(name, factor, 'a finite number above 1');
}

export const magnificationWithRingsAroundConverterFormula = {
  gives: 'magnification',
  from: [
    'working.converter-factor',
    'focus-magnification',
    'front-ring.extension',
    'focal-length',
    'rear-ring.extension',
    'converter-factor',
  ],
  tex: String.raw`\q{magnification} = \q{working.converter-factor}\left(\q{focus-magnification} + \frac{\q{front-ring.extension}}{\q{focal-length}}\right) + \frac{\q{rear-ring.extension}}{\q{converter-factor}\,\q{focal-length}}`,
  evaluate: magnificationWithRingsAroundConverter,
  says: 'What lens and front ring make is enlarged; a ring behind adds as on a lens of k times the focal length.',
  source: 'derived in core/rig/README.md#converters',
  checkedBy: ['converter-matrices', 'rings-and-converters-in-practice'],
  // A factor of 1 converts nothing.
  sample: { 'converter-factor': [1.1, 4], 'working.converter-factor': [1.1, 4] },
} as const satisfies Formula<Inputs>;
