import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'sideways-speed' | 'exposure-time';

/**
 * The streak on the sensor when a camera sways sideways while the shutter is open.
 *
 * blur = m v_s t
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.sidewaysSpeed *v_s*, of the camera across the axis, mm/s; 0 or above
 * @param given.exposureTime *t*, s; above 0
 * @returns mm on the sensor, in the sharp plane. Stabilisation that feels turning alone does nothing against it.
 * @throws OutOfRange for anything not finite, a magnification or a time of zero or below, and a speed below zero
 *
 * Assumes a speed that is steady while the shutter is open.
 * Source: definition of the magnification. Derived in [README](README.md#sideways).
 *
 * @example motionBlurSideways({ magnification: 1, sidewaysSpeed: 5, exposureTime: 0.01 }) // 0.05
 */
export function motionBlurSideways({ magnification, sidewaysSpeed, exposureTime }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requireNotNegative('sideways-speed', sidewaysSpeed);
  requirePositive('exposure-time', exposureTime);
  return magnification * sidewaysSpeed * exposureTime;
}

export const motionBlurSidewaysFormula = {
  gives: 'motion-blur',
  from: ['magnification', 'sideways-speed', 'exposure-time'],
  tex: String.raw`\q{motion-blur} = \q{magnification}\,\q{sideways-speed}\,\q{exposure-time}`,
  evaluate: motionBlurSideways,
  says: 'Close up the camera need not turn: swaying sideways blurs the picture too.',
  source: 'definition of the magnification',
  checkedBy: ['image-motion', 'turned-cameras-in-matrices'],
} as const satisfies Formula<Inputs>;
