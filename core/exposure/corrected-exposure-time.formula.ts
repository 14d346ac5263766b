import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'exposure-time' | 'effective-f-number' | 'f-number';

/**
 * The exposure time for a lens that works at another f-number than it is marked with, from a time found without it.
 *
 * t (N_w/N)²
 *
 * @param given.exposureTime *t*, from a hand meter or a table, for the marked f-number; s, above 0
 * @param given.effectiveFNumber *N_w*, at which the lens works, above 0
 * @param given.fNumber *N*, as marked, above 0
 * @returns s. Not for a time that the camera has measured through the lens: that has seen the loss.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes light that reaches all of the lens; no loss in glass.
 * Source: illuminance at the sensor goes as one over the square of the effective f-number. See [README](README.md#stops).
 *
 * @example correctedExposureTime({ exposureTime: 0.01, effectiveFNumber: 16, fNumber: 8 }) // 0.04
 */
export function correctedExposureTime({ exposureTime, effectiveFNumber, fNumber }: Named<Inputs>): number {
  requirePositive('exposure-time', exposureTime);
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('f-number', fNumber);
  return requirePositive('exposure-time', exposureTime * (effectiveFNumber / fNumber) ** 2);
}

export const correctedExposureTimeFormula = {
  gives: 'corrected.exposure-time',
  from: ['exposure-time', 'effective-f-number', 'f-number'],
  tex: String.raw`\q{corrected.exposure-time} = \q{exposure-time}\left(\frac{\q{effective-f-number}}{\q{f-number}}\right)^2`,
  evaluate: correctedExposureTime,
  says: 'At life size a symmetrical lens needs four times what a hand meter says.',
  source: 'illuminance goes as one over the square of the effective f-number',
  checkedBy: ['hand-meters-close-up'],
} as const satisfies Formula<Inputs>;
