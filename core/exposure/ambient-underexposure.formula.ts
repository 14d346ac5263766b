import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'ambient.exposure-time' | 'shutter.exposure-time';

/**
 * Stops by which the light already there, alone, falls short of a full exposure.
 *
 * ambient underexposure = log2(needed time / shutter time)
 *
 * @param given.ambientExposureTime s, as metered without the flash, at the same N_w and ISO; above 0
 * @param given.shutterExposureTime s, for which the shutter is open; above 0
 * @returns stops; below zero where the shutter is open for longer than that light needs
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: the definition of a stop. Derived in [README](README.md#ambient).
 *
 * @example ambientUnderexposure({ ambientExposureTime: 0.04, shutterExposureTime: 0.005 }) // 3
 */
export function ambientUnderexposure({ ambientExposureTime, shutterExposureTime }: Named<Inputs>): number {
  requirePositive('ambient.exposure-time', ambientExposureTime);
  requirePositive('shutter.exposure-time', shutterExposureTime);
  return Math.log2(ambientExposureTime / shutterExposureTime);
}

export const ambientUnderexposureFormula = {
  gives: 'ambient-underexposure',
  from: ['ambient.exposure-time', 'shutter.exposure-time'],
  tex: String.raw`\q{ambient-underexposure} = \log_2\frac{\q{ambient.exposure-time}}{\q{shutter.exposure-time}}`,
  evaluate: ambientUnderexposure,
  says: 'Half the time that daylight needs leaves it one stop short.',
  source: 'definition of a stop, core/exposure/README.md#ambient',
  checkedBy: ['flash-by-other-routes', 'flash-in-stops'],
} as const satisfies Formula<Inputs>;
