import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';

/** Something that swings to and fro as a pendulum does, while a shutter is open: a flower in the wind, a wing. */
export interface SwingInExposure {
  /** Once to and fro, s, above 0 */
  readonly swingPeriod: number;
  /** From the middle to one end, mm, above 0 */
  readonly swingAmplitude: number;
  /** *t*, s, 0 or above */
  readonly exposureTime: number;
}

/**
 * The longest path that it covers while the shutter is open.
 *
 * 2 · amplitude · sin(π t / period), and the whole swing, twice the amplitude, from half a period on
 *
 * @param swing see {@link SwingInExposure}
 * @returns mm on the subject, reached when the middle is passed in the middle of the time; *m* times that is the streak on the
 *   sensor. Less at other moments: at the ends of the swing it stands still.
 * @throws OutOfRange for what lies outside
 *
 * Assumes harmonic motion across the axis. See [README](README.md#swing).
 *
 * @example swingDuring({ swingPeriod: 0.004, swingAmplitude: 4, exposureTime: 0.002 }) // 8
 */
export function swingDuring({ swingPeriod, swingAmplitude, exposureTime }: SwingInExposure): number {
  requirePositive('swing-period', swingPeriod);
  requirePositive('swing-amplitude', swingAmplitude);
  requireNotNegative('exposure-time', exposureTime);
  const halfPeriods = Math.min(1, (2 * exposureTime) / swingPeriod);
  return 2 * swingAmplitude * Math.sin((Math.PI / 2) * halfPeriods);
}
