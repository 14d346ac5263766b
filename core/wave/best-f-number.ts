import type { Cone } from '#core/depth/cone.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { balancedDepth, depthAround, inWaves, type DepthInWaves } from './depth-in-waves.ts';
import { transferAt } from './optical-transfer.ts';
import { requirePupil, stoppedDownAberration } from './pupil.ts';
import { bestShift } from './shifted-depth.ts';

/** A deep subject, the chain that looks at it and the fineness of detail that matters. */
export interface DepthAtFrequency extends Readonly<Named<'subject-depth' | 'wavelength' | 'spatial-frequency'>> {
  /** The cone of the chain with its iris at the marked *N*: `coneOfLens`, `coneOfPupil`, a solved rig. */
  readonly coneAt: (fNumber: number) => Cone;
  /** *W₀₄₀* at the maximum aperture, wavelengths; a perfect lens where left out. */
  readonly wideOpen?: Readonly<Named<'spherical-aberration' | 'max-aperture'>>;
  /** How far behind the nearest part the sharp plane stands, mm, from 0 to *Z*; where it serves best, for each *N*, where left out. */
  readonly planeDepth?: number;
}

/** The least contrast left anywhere in a deep subject, and where the sharp plane stands for it, mm behind the nearest part. */
export interface WorstContrast {
  readonly contrast: number;
  readonly planeDepth: number;
}

/** The f-number to mark, what it leaves and where to focus. */
export interface BestFNumber extends WorstContrast {
  readonly fNumber: number;
}

/**
 * The marked f-number that keeps most contrast where a deep subject has least, through any chain.
 *
 * largest over N of the least over the depth of OTF(ν), a reversed one counting as 0
 *
 * @param given.subjectDepth *Z*, nearest to farthest part that should be sharp, mm; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.spatialFrequency *ν*, that should be kept, line pairs per millimetre on the sensor; above 0
 * @param given.coneAt *m*, *N_w* and *1/u* at a marked *N*, the chain focused on the sharp plane
 * @param given.wideOpen spherical aberration of the lens at its maximum aperture, if any
 * @param given.planeDepth where the sharp plane stands, if not where it serves best
 * @param fNumbers *N*, as marked, each above 0 and none below `wideOpen.maxAperture`
 * @returns the first of the best, or null where no f-number keeps the pattern over the whole depth: time to stack
 * @throws OutOfRange for a quantity outside its range
 *
 * Assumes what {@link worstContrast} assumes. Source: derived in [README](README.md#best).
 *
 * @example bestFNumber({ subjectDepth: 2, wavelength: 0.00055, spatialFrequency: 25, coneAt: (fNumber) => ({ magnification: 1,
 *   effectiveFNumber: 2 * fNumber, inverseEntrancePupilDistance: 0.01 }) }, [5.6, 8, 11, 16, 22]) // f/16, 0.3627
 */
export function bestFNumber(given: DepthAtFrequency, fNumbers: readonly number[]): BestFNumber | null {
  let best: BestFNumber | null = null;
  for (const fNumber of fNumbers) {
    const worst = worstContrast(given, fNumber);
    if (worst.contrast > (best?.contrast ?? 0)) best = { fNumber, ...worst };
  }
  return best;
}

/**
 * The least contrast that a marked f-number leaves anywhere in a deep subject, through any chain.
 *
 * least of OTF(ν) for W₀₂₀ = m² δ/(8 λ N_w² (1 + δ/u)) about best focus, δ from the nearest to the farthest part
 *
 * @param given see {@link bestFNumber}
 * @param fNumber *N*, as marked; above 0
 * @returns the contrast, 0 where the pattern is lost or reversed anywhere in the depth, and where the sharp plane stands. Left free it
 *   stands where both ends are blurred alike; with spherical aberration, whose two sides differ, where the worst is best.
 * @throws OutOfRange for a quantity outside its range, and for a subject that reaches the entrance pupil
 *
 * Assumes a sharp plane at best focus (W₀₂₀ = −W₀₄₀ there), a camera moved rather than refocused (m stays in the sharp plane), a slender cone
 * and one wavelength.
 */
export function worstContrast(given: DepthAtFrequency, fNumber: number): WorstContrast {
  const frequency = requirePositive('spatial-frequency', given.spatialFrequency);
  const cone = given.coneAt(requirePositive('f-number', fNumber));
  const depth = inWaves(cone, given);
  const sphericalAberration = given.wideOpen ? stoppedDownAberration({ ...given.wideOpen, fNumber }) : 0;
  requirePupil({ defocusAberration: 0, sphericalAberration });

  const share = frequency * given.wavelength * cone.effectiveFNumber;
  // Along W₀₂₀ the transfer holds nothing faster than 4 s (1 − s) periods a wavelength: eight steps a period follow it.
  const stepsPerWave = 32 * share * (1 - share);
  const transferOff = (waves: number) =>
    transferAt({ defocusAberration: waves - sphericalAberration, sphericalAberration }, share);

  const placed =
    given.planeDepth !== undefined
      ? depthAround(depth, given.planeDepth)
      : sphericalAberration === 0 || share >= 1
        ? balancedDepth(depth)
        : bestShift(depth, Math.abs(sphericalAberration) + 1, stepsPerWave, transferOff);
  const { planeDepth } = placed;
  if (share >= 1) return { contrast: 0, planeDepth };
  const even = sphericalAberration === 0;
  return { contrast: least(even ? evenly(placed) : placed, stepsPerWave, transferOff), planeDepth };
}

/** A perfect pupil does not tell one side from the other: the longer one holds the shorter. */
function evenly({ planeDepth, near, far }: DepthInWaves): DepthInWaves {
  return { planeDepth, near: 0, far: Math.max(near, far) };
}

/** The least transfer between both ends, 0 from where the pattern is lost on. Outwards from best focus, so that what is lost is found soon. */
function least({ near, far }: DepthInWaves, stepsPerWave: number, transferOff: (waves: number) => number): number {
  if (!(near < Infinity && far < Infinity)) return 0;
  let worst = 1;
  for (const end of [far, -near]) {
    const steps = Math.ceil(stepsPerWave * Math.abs(end)) + 4;
    for (let step = 0; step <= steps && worst > 0; step++) {
      worst = Math.min(worst, transferOff((end * step) / steps));
    }
  }
  return Math.max(0, worst);
}
