import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { DepthAtFrequency } from './best-f-number.ts';
import { inWaves, wavesAt } from './depth-in-waves.ts';
import { transferAt } from './optical-transfer.ts';
import { blurDiscTransfer } from './blur-disc-transfer.ts';
import { mostDefocus, requirePupil, stoppedDownAberration } from './pupil.ts';

/** A subject with the sharp plane put somewhere, and a place in it: both counted from its nearest part, mm, from 0 to *Z*. */
export interface PlaceInDepth extends DepthAtFrequency {
  readonly planeDepth: number;
  readonly placeDepth: number;
}

/**
 * The contrast that a marked f-number leaves at one place of a deep subject, through any chain: what `worstContrast` is the least of.
 *
 * OTF(ν) for W₀₂₀ = m² δ/(8 λ N_w² (1 + δ/u)) about best focus, a reversed one counting as 0; beyond 200 waves that of the blur disc
 *
 * @param given the subject, the chain and the detail as `bestFNumber` takes them, the sharp plane and the place
 * @param fNumber *N*, as marked; above 0, and not below `wideOpen.maxAperture`
 * @returns the share of its contrast that the pattern keeps there, 0 where it is lost or reversed
 * @throws OutOfRange for a quantity outside its range
 *
 * Assumes what `worstContrast` assumes. Source: derived in [README](README.md#best).
 *
 * @example contrastAtPlace({ subjectDepth: 2, wavelength: 0.00055, spatialFrequency: 25, planeDepth: 1, placeDepth: 1, coneAt: (fNumber) =>
 *   ({ magnification: 1, effectiveFNumber: 2 * fNumber, inverseEntrancePupilDistance: 0 }) }, 16) // 0.4584, in focus
 */
export function contrastAtPlace(given: PlaceInDepth, fNumber: number): number {
  const frequency = requirePositive('spatial-frequency', given.spatialFrequency);
  const cone = given.coneAt(requirePositive('f-number', fNumber));
  const depth = inWaves(cone, given);
  for (const place of [given.planeDepth, given.placeDepth]) {
    if (!(place >= 0 && place <= given.subjectDepth)) {
      throw new OutOfRange('near-limit', place, `from 0 to ${given.subjectDepth} mm, inside the subject`);
    }
  }
  const sphericalAberration = given.wideOpen ? stoppedDownAberration({ ...given.wideOpen, fNumber }) : 0;
  requirePupil({ defocusAberration: 0, sphericalAberration });
  const waves = wavesAt(depth, given.placeDepth - given.planeDepth);
  if (!Number.isFinite(waves)) return 0;
  const share = frequency * given.wavelength * cone.effectiveFNumber;
  const defocusAberration = waves - sphericalAberration;
  if (share < 1 && Math.abs(defocusAberration) > mostDefocus) {
    // b = 8 λ N_w W₀₂₀.
    const defocusBlur = 8 * given.wavelength * cone.effectiveFNumber * Math.abs(defocusAberration);
    return Math.max(0, blurDiscTransfer({ defocusBlur, spatialFrequency: frequency }));
  }
  return Math.max(0, transferAt({ defocusAberration, sphericalAberration }, share));
}
