import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'swing-amplitude' | 'swing-period';

/**
 * How fast something that swings to and fro passes the middle of its swing.
 *
 * v = 2π · amplitude / period
 *
 * @param given.swingAmplitude from the middle to one end, mm; above 0
 * @param given.swingPeriod once to and fro, s; above 0
 * @returns *v*, mm/s, its fastest. At the ends it stands still for a moment: wait for that one.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes harmonic motion, as of a pendulum, across the axis.
 * Source: harmonic motion. Derived in [README](README.md#swing).
 *
 * @example subjectSpeedOfSwing({ swingAmplitude: 10, swingPeriod: 0.5 }) // 125.66...
 */
export function subjectSpeedOfSwing({ swingAmplitude, swingPeriod }: Named<Inputs>): number {
  requirePositive('swing-amplitude', swingAmplitude);
  requirePositive('swing-period', swingPeriod);
  return (2 * Math.PI * swingAmplitude) / swingPeriod;
}

export const subjectSpeedOfSwingFormula = {
  gives: 'subject-speed',
  from: ['swing-amplitude', 'swing-period'],
  tex: String.raw`\q{subject-speed} = \frac{2\pi\,\q{swing-amplitude}}{\q{swing-period}}`,
  evaluate: subjectSpeedOfSwing,
  says: 'Whatever swings is fastest in the middle and stands still at the ends.',
  source: 'derived in core/exposure/README.md#swing',
  checkedBy: ['camera-shake', 'image-motion'],
} as const satisfies Formula<Inputs>;
