import { requirePositive } from '#core/quantity/errors.ts';

/** What lights a picture: the light already there, a flash, or neither without a higher ISO. */
export type LightWanted = 'ambient' | 'flash' | 'higher-iso';

/**
 * Shutter or flash: the light already there where its time holds still what moves, else a flash where it has the power, else a higher ISO.
 *
 * @param given.ambientExposureTime that the light already there asks for, s; above 0
 * @param given.slowestExposureTime that keeps all movement within the circle of confusion, s; above 0
 * @param given.neededFlashPower that the flash must give, share of full power; above 0, above 1 where it is too weak
 * @returns the first of the three that serves
 * @throws OutOfRange for what is not finite and above zero
 *
 * Does not ask for taste: where daylight serves, a flash may still be the better light. See [README](README.md#shutter-or-flash).
 *
 * @example shutterOrFlash({ ambientExposureTime: 1 / 4, slowestExposureTime: 1 / 400, neededFlashPower: 0.15 }) // 'flash'
 */
export function shutterOrFlash(given: {
  readonly ambientExposureTime: number;
  readonly slowestExposureTime: number;
  readonly neededFlashPower: number;
}): LightWanted {
  requirePositive('exposure-time', given.ambientExposureTime);
  requirePositive('exposure-time', given.slowestExposureTime);
  requirePositive('flash-power', given.neededFlashPower);
  if (given.ambientExposureTime <= given.slowestExposureTime) return 'ambient';
  return given.neededFlashPower <= 1 ? 'flash' : 'higher-iso';
}
