import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';

/** A camera that turns while its shutter is open. */
export interface TurningCamera {
  /** *m*, of the whole chain, in the sharp plane, above 0 */
  readonly magnification: number;
  /** From the point about which it turns, on the axis, to the sharp plane, mm, 0 or above */
  readonly distance: number;
  /** *ω*, rad/s, 0 or above */
  readonly shakeRate: number;
  /** *t*, s, above 0 */
  readonly exposureTime: number;
  /** stops, 0 or above */
  readonly stabilisation: number;
}

/**
 * The streak of a camera that turns about any point of its axis, with any chain of parts before it.
 *
 * blur = m · distance · ω t / 2^stabilisation
 *
 * @param camera see {@link TurningCamera}
 * @returns mm on the sensor, in the sharp plane near the axis; 0 for turning about the subject
 * @throws OutOfRange for what lies outside
 *
 * The two closed forms that lessons teach are this with the focus distance and with the entrance pupil's distance put in.
 * See [README](README.md#turning).
 *
 * @example motionBlurTurning({ magnification: 1, distance: 400, shakeRate: 0.01, exposureTime: 0.01, stabilisation: 0 }) // 0.04
 */
export function motionBlurTurning(camera: TurningCamera): number {
  const { magnification, distance, shakeRate, exposureTime, stabilisation } = camera;
  requirePositive('magnification', magnification);
  requireNotNegative('subject-distance', distance);
  requireNotNegative('shake-rate', shakeRate);
  requirePositive('exposure-time', exposureTime);
  requireNotNegative('stabilisation', stabilisation);
  return (magnification * distance * shakeRate * exposureTime) / 2 ** stabilisation;
}
