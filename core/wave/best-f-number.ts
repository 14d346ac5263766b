import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { transferAt } from './optical-transfer.ts';
import { requirePupil, stoppedDownAberration } from './pupil.ts';

/** A deep subject, the lens that looks at it and the fineness of detail that matters. */
export interface DepthAtFrequency extends Named<
  'subject-depth' | 'magnification' | 'pupil-magnification' | 'wavelength' | 'spatial-frequency'
> {
  /** *W₀₄₀* at the maximum aperture, wavelengths; a perfect lens where left out. */
  readonly wideOpen?: Named<'spherical-aberration' | 'max-aperture'>;
}

/** The f-number to mark, and the least contrast that it leaves anywhere in the depth. */
export interface BestFNumber {
  readonly fNumber: number;
  readonly contrast: number;
}

/**
 * The marked f-number that keeps most contrast where a deep subject has least.
 *
 * largest over N of the least over the depth of OTF(ν), a reversed one counting as 0
 *
 * @param given.subjectDepth *Z*, nearest to farthest part that should be sharp, mm; above 0
 * @param given.magnification *m*, in the middle of the subject; above 0
 * @param given.pupilMagnification *P*, above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.spatialFrequency *ν*, that should be kept, line pairs per millimetre on the sensor; above 0
 * @param given.wideOpen spherical aberration of the lens at its maximum aperture, if any
 * @param fNumbers *N*, as marked on the lens, each above 0 and none below `wideOpen.maxAperture`
 * @returns the first of the best, or null where no f-number keeps the pattern over the whole depth: time to stack
 * @throws OutOfRange for a quantity outside its range
 *
 * Assumes what {@link worstContrast} assumes. Source: derived in [README](README.md#best).
 *
 * @example bestFNumber({ subjectDepth: 2, magnification: 1, pupilMagnification: 1, wavelength: 0.00055, spatialFrequency: 25 },
 *   [5.6, 8, 11, 16, 22]) // { fNumber: 16, contrast: 0.362761 }
 */
export function bestFNumber(given: DepthAtFrequency, fNumbers: readonly number[]): BestFNumber | null {
  let best: BestFNumber | null = null;
  for (const fNumber of fNumbers) {
    const contrast = worstContrast(given, fNumber);
    if (contrast > (best?.contrast ?? 0)) best = { fNumber, contrast };
  }
  return best;
}

/**
 * The least contrast that a marked f-number leaves anywhere in a deep subject.
 *
 * least of OTF(ν) for W₀₂₀ from −W to W about best focus, W = m² (Z/2)/(8 λ N_w²), N_w = N (1 + m/P)
 *
 * @param given see {@link bestFNumber}
 * @param fNumber *N*, as marked; above 0
 * @returns the contrast, 0 where the pattern is lost or reversed anywhere in the depth
 * @throws OutOfRange for a quantity outside its range
 *
 * Assumes focus in the middle of the depth (W₀₂₀ = −W₀₄₀ there: best focus), a depth small beside the subject distance, a lens
 * alone and the right way round, and one wavelength.
 */
export function worstContrast(given: DepthAtFrequency, fNumber: number): number {
  const frequency = requirePositive('spatial-frequency', given.spatialFrequency);
  const magnification = requirePositive('magnification', given.magnification);
  const wavelength = requirePositive('wavelength', given.wavelength);
  const depth = requirePositive('subject-depth', given.subjectDepth);
  const slowing = 1 + magnification / requirePositive('pupil-magnification', given.pupilMagnification);
  const effectiveFNumber = slowing * requirePositive('f-number', fNumber);

  const share = frequency * wavelength * effectiveFNumber;
  if (share >= 1) return 0;
  const sphericalAberration = given.wideOpen ? stoppedDownAberration({ ...given.wideOpen, fNumber }) : 0;
  requirePupil({ defocusAberration: 0, sphericalAberration });
  const outermost = (magnification ** 2 * depth) / (16 * wavelength * effectiveFNumber ** 2);

  // Along W₀₂₀ the transfer holds nothing faster than 4 s (1 − s) periods a wavelength: eight steps a period follow it.
  const steps = Math.ceil(32 * share * (1 - share) * outermost) + 4;
  let worst = 1;
  for (let step = 0; step <= steps && worst > 0; step++) {
    const offset = (outermost * step) / steps;
    for (const side of sphericalAberration === 0 ? [1] : [1, -1]) {
      const pupil = { defocusAberration: side * offset - sphericalAberration, sphericalAberration };
      worst = Math.min(worst, transferAt(pupil, share));
    }
  }
  return Math.max(0, worst);
}
