import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'magnification' | 'focal-length';

/**
 * The close-up lens that gives a wanted magnification on a lens focused at infinity.
 *
 * Φ = 1000 m/f, f in mm and Φ in dpt
 *
 * @param given.magnification *m*, wanted, above 0
 * @param given.focalLength *f*, of the camera lens, mm, above 0
 * @returns *Φ*, dpt. Close-up lenses come in powers of their own, and powers of stacked ones add: it is for you to find a set that makes it.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens at infinity; the gap between the two does not matter then.
 * Source: m = f Φ/1000 solved for Φ; derived in [README](README.md#close-up-lenses).
 *
 * @example closeUpPowerForMagnification({ magnification: 0.5, focalLength: 100 }) // 5
 */
export function closeUpPowerForMagnification({ magnification, focalLength }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('focal-length', focalLength);
  return (metre * magnification) / focalLength;
}

export const closeUpPowerForMagnificationFormula = {
  gives: 'close-up-power',
  from: ['magnification', 'focal-length'],
  tex: String.raw`\q{close-up-power} = \frac{1000\,\q{magnification}}{\q{focal-length}}`,
  evaluate: closeUpPowerForMagnification,
  says: 'The longer the lens behind, the weaker the close-up lens that a size asks for.',
  source: 'derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices'],
} as const satisfies Formula<Inputs>;
