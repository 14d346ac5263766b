import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';
import { requireShare } from './share.ts';

type Inputs = 'guide-number' | 'iso' | 'flash-power' | 'flash-distance';

/**
 * The f-number of the cone that a flash exposes correctly.
 *
 * N_w = GN √(S/100 · power) / d, with d in metres
 *
 * @param given.guideNumber *GN*, at ISO 100 and full power, m; above 0
 * @param given.iso *S*, exposure index; above 0
 * @param given.flashPower share of full power, above 0 and at most 1
 * @param given.flashDistance *d*, flash head to subject, mm; above 0
 * @returns *N_w*, a pure number. Not the marked number to set: close up that is smaller (`f-number-for-flash`).
 * @throws OutOfRange for anything not finite and above zero, and for a power above 1
 *
 * Assumes that the flash is small against its distance and faces the subject: under a few diameters a broad head gives less than its
 * guide number promises (`illuminance-from-disc`). The makers’ numbers often count on pale walls and on a reflector set narrow.
 * Source: ISO 1230 defines guide numbers (from memory); illuminance goes as power over the square of distance. Derived in [README](README.md#flash).
 *
 * @example effectiveFNumberFromGuideNumber({ guideNumber: 14, iso: 100, flashPower: 0.25, flashDistance: 250 }) // 28
 */
export function effectiveFNumberFromGuideNumber({
  guideNumber,
  iso,
  flashPower,
  flashDistance,
}: Named<Inputs>): number {
  requirePositive('guide-number', guideNumber);
  requirePositive('iso', iso);
  requireShare('flash-power', flashPower);
  requirePositive('flash-distance', flashDistance);
  return (guideNumber / (flashDistance / metre)) * Math.sqrt((iso / 100) * flashPower);
}

export const effectiveFNumberFromGuideNumberFormula = {
  gives: 'effective-f-number',
  from: ['guide-number', 'iso', 'flash-power', 'flash-distance'],
  tex: String.raw`\q{effective-f-number} = \frac{\q{guide-number}}{\q{flash-distance}/1000}\sqrt{\frac{\q{iso}}{100}\,\q{flash-power}}`,
  metres: 'flash-distance',
  evaluate: effectiveFNumberFromGuideNumber,
  says: 'Guide number over distance in metres; one stop less power needs an aperture one stop wider.',
  source: 'ISO 1230 (from memory)',
  checkedBy: ['flash-in-stops', 'guide-numbers'],
} as const satisfies Formula<Inputs>;
