import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'pixel-pitch';

/**
 * How many sensor pixels lie along one millimetre of the subject.
 *
 * pixels per millimetre = m / p
 *
 * @param given.magnification *m*, image over subject size, above 0
 * @param given.pixelPitch *p*, centre to centre, mm, above 0
 * @returns pixels per millimetre of subject, in the sharp plane. Samples, not resolved detail: lens and diffraction decide that.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification. See [README](README.md#field).
 *
 * @example pixelsPerMillimetre({ magnification: 1, pixelPitch: 0.005 }) // 200
 */
export function pixelsPerMillimetre({ magnification, pixelPitch }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('pixel-pitch', pixelPitch);
  return magnification / pixelPitch;
}

export const pixelsPerMillimetreFormula = {
  gives: 'pixels-per-millimetre',
  from: ['magnification', 'pixel-pitch'],
  tex: String.raw`\q{pixels-per-millimetre} = \frac{\q{magnification}}{\q{pixel-pitch}}`,
  evaluate: pixelsPerMillimetre,
  says: 'Detail on the subject comes from magnification and from small pixels, not from many of them.',
  source: 'definition of lateral magnification',
  checkedBy: ['resolution-of-pixels'],
} as const satisfies Formula<Inputs>;
