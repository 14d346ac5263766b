import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import { motionBlurOfSubject } from './motion-blur-of-subject.formula.ts';
import { requireShare } from './share.ts';

/**
 * The shutter time to set with a flash: the one wanted, or the sync limit where that is longer.
 *
 * @param given.exposureTime *t*, wanted for the light already there, s; above 0
 * @param given.syncSpeed shortest time at which the shutter stands fully open, s; above 0
 * @returns s. Below the sync limit a curtain covers part of the frame when the flash fires.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a single flash, much shorter than the shutter time. See [README](README.md#ambient).
 *
 * @example shutterTimeWithFlash({ exposureTime: 0.001, syncSpeed: 0.005 }) // 0.005
 */
export function shutterTimeWithFlash(given: { exposureTime: number; syncSpeed: number }): number {
  requirePositive('exposure-time', given.exposureTime);
  return Math.max(given.exposureTime, requirePositive('sync-speed', given.syncSpeed));
}

/**
 * The share of the frame, from the side that opened first, on which the second curtain lies when the flash fires: 1 − t/sync.
 *
 * @param given.exposureTime *t*, set, s; above 0
 * @param given.syncSpeed shortest time at which the shutter stands fully open, s; above 0
 * @returns from 0 to 1: 0 at the sync limit and longer
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes curtains that cross the frame evenly in the sync time, and a flash that fires when the first has arrived. See [README](README.md#ambient).
 *
 * @example shareBehindCurtain({ exposureTime: 0.001, syncSpeed: 0.005 }) // 0.8
 */
export function shareBehindCurtain(given: { exposureTime: number; syncSpeed: number }): number {
  requirePositive('exposure-time', given.exposureTime);
  return Math.max(0, 1 - given.exposureTime / requirePositive('sync-speed', given.syncSpeed));
}

/** What a moving subject leaves on the sensor under flash and the light already there. */
export interface MovementUnderFlash {
  /** Streak within the sharp image that the flash makes, mm on the sensor. */
  readonly inFlash: number;
  /** Streak that the light already there draws, mm on the sensor. */
  readonly inAmbient: number;
  /** Strength of the latter: its share of all light recorded. */
  readonly ambientShare: number;
}

/**
 * Two pictures of a moving subject, one on the other: the flash's, with the flash duration as its shutter, and that of the light already there.
 *
 * @param given.magnification *m*, above 0
 * @param given.subjectSpeed *v*, across the axis, mm/s; 0 or above
 * @param given.exposureTime *t*, s; above 0
 * @param given.flashDuration s, while the flash gives nearly all its light (t0.1): the shorter t0.5 leaves out half of it; above 0
 * @param given.ambientShare of the exposure, from 0 to 1
 * @throws OutOfRange for what lies outside
 *
 * See [README](README.md#ambient).
 */
export function movementUnderFlash(given: {
  magnification: number;
  subjectSpeed: number;
  exposureTime: number;
  flashDuration: number;
  ambientShare: number;
}): MovementUnderFlash {
  const { exposureTime, ambientShare } = given;
  const flashDuration = requirePositive('flash-duration', given.flashDuration);
  if (requireNotNegative('ambient-share', ambientShare) > 0) requireShare('ambient-share', ambientShare);
  return {
    inFlash: motionBlurOfSubject({ ...given, exposureTime: flashDuration }),
    inAmbient: motionBlurOfSubject({ ...given, exposureTime }),
    ambientShare,
  };
}
