import { requireFinite, requirePositive } from '#core/quantity/errors.ts';

/**
 * Stops from f/1, the aperture value of the additive system: 2 log2 N.
 *
 * @param fNumber *N*, exact and not as marked: f/11 stands for 11.3137; above 0
 * @returns stops, 0 for f/1, 7 for the f/11 that is marked
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: ASA PH2.5-1960 (from memory); Exif's ApertureValue. See [README](README.md#stops).
 *
 * @example apertureValue(16) // 8
 */
export function apertureValue(fNumber: number): number {
  return 2 * Math.log2(requirePositive('f-number', fNumber));
}

/**
 * The exact f-number so many stops from f/1: 2^(A_v/2). What is marked there is `nominalFNumber` of it.
 *
 * @throws OutOfRange for anything not finite, and where no f-number is left
 * @example fNumberOfApertureValue(7) // 11.3137...
 */
export function fNumberOfApertureValue(stops: number): number {
  return requirePositive('f-number', 2 ** (requireFinite('exposure-value', stops) / 2));
}

/**
 * Stops from 1 s, the time value of the additive system: −log2 t.
 *
 * @param exposureTime *t*, exact and not as marked: 1/125 s stands for 1/128 s; s, above 0
 * @returns stops, 0 for 1 s, 7 for 1/128 s, negative for longer times
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: ASA PH2.5-1960 (from memory); Exif's ShutterSpeedValue. See [README](README.md#stops).
 *
 * @example timeValue(0.125) // 3
 */
export function timeValue(exposureTime: number): number {
  return -Math.log2(requirePositive('exposure-time', exposureTime));
}

/**
 * The exact exposure time so many stops from 1 s: 2^(−T_v), s. What is marked there is `nominalShutterTime` of it.
 *
 * @throws OutOfRange for anything not finite, and where no time is left
 * @example exposureTimeOfTimeValue(7) // 0.0078125
 */
export function exposureTimeOfTimeValue(stops: number): number {
  return requirePositive('exposure-time', 2 ** -requireFinite('exposure-value', stops));
}

/**
 * The time that makes up for lost light: t · 2^stops.
 *
 * @param exposureTime *t*, without the loss, s; above 0
 * @param lightLoss stops, of either sign
 * @returns s. Only for a time found without the lens, at the subject or in a table: a meter behind it has seen the loss.
 * @throws OutOfRange for anything not finite, and where the time would be
 * @example timeForLightLoss({ exposureTime: 0.01, lightLoss: 2 }) // 0.04
 */
export function timeForLightLoss({ exposureTime, lightLoss }: { exposureTime: number; lightLoss: number }): number {
  requirePositive('exposure-time', exposureTime);
  return requirePositive('exposure-time', exposureTime * 2 ** requireFinite('light-loss', lightLoss));
}
