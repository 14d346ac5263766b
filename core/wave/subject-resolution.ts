import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { airyDiameter } from './airy-diameter.formula.ts';

/** Finest detail, as the distance on the subject from one line to the next. */
export interface SubjectResolution {
  /** What diffraction lets through: Rayleigh's separation over the magnification, mm. */
  readonly optics: number;
  /** What the pixels can sample: two of them over the magnification, mm. */
  readonly pixels: number;
  /** The larger of the two, mm. */
  readonly finest: number;
  readonly limitedBy: 'optics' | 'pixels';
}

/**
 * The finest detail on the subject that a perfect lens in focus and its sensor can show, and which of the two limits it.
 *
 * optics: 1.21966989… λ N_w/m; pixels: 2p/m
 *
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @param given.magnification *m*, image over subject size; above 0
 * @param given.pixelPitch *p*, centre to centre of neighbouring pixels, mm; above 0
 * @returns both limits and the one that counts. Not a contrast: at Rayleigh's separation 9 % of it is left.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: Rayleigh's criterion, Born & Wolf, Principles of Optics, 8.6.2 (from memory); sampling theorem. See [README](README.md#sampling).
 *
 * @example subjectResolution({ wavelength: 0.00055, effectiveFNumber: 16, magnification: 1, pixelPitch: 0.004 })
 *   // { optics: 0.010733, pixels: 0.008, finest: 0.010733, limitedBy: 'optics' }
 */
export function subjectResolution(
  given: Named<'wavelength' | 'effective-f-number' | 'magnification' | 'pixel-pitch'>,
): SubjectResolution {
  const magnification = requirePositive('magnification', given.magnification);
  const optics = airyDiameter(given) / 2 / magnification;
  const pixels = (2 * requirePositive('pixel-pitch', given.pixelPitch)) / magnification;
  const limitedBy = optics > pixels ? 'optics' : 'pixels';
  return { optics, pixels, finest: Math.max(optics, pixels), limitedBy };
}
