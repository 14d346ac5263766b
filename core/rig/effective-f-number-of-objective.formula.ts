import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'numerical-aperture';

/**
 * The f-number of the cone at the sensor behind a microscope objective.
 *
 * N_w = m/(2 NA)
 *
 * @param given.magnification *m*, on the sensor; above 0
 * @param given.numericalAperture *NA*, as engraved; above 0 and below 1, in air
 * @returns *N_w*, or more where the lens behind has the smaller pupil. It is large: a tenfold objective of 0.25 works at f/20.
 * @throws OutOfRange for values out of range
 *
 * Assumes an objective that keeps Abbe's sine condition, as good ones do: the aperture is a sine on the subject's side and a tangent at the sensor.
 * Source: m = sine on the one side over slope on the other; derived in [README](README.md#objectives).
 *
 * @example effectiveFNumberOfObjective({ magnification: 10, numericalAperture: 0.25 }) // 20
 */
export function effectiveFNumberOfObjective({ magnification, numericalAperture }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  if (!(numericalAperture > 0 && numericalAperture < 1)) {
    throw new OutOfRange('numerical-aperture', numericalAperture, 'above 0 and below 1, in air');
  }
  return magnification / (2 * numericalAperture);
}

export const effectiveFNumberOfObjectiveFormula = {
  gives: 'effective-f-number',
  from: ['magnification', 'numerical-aperture'],
  tex: String.raw`\q{effective-f-number} = \frac{\q{magnification}}{2\,\q{numerical-aperture}}`,
  evaluate: effectiveFNumberOfObjective,
  says: 'On the sensor’s side, the cone is as many times narrower as the picture is larger.',
  source: 'Abbe’s sine condition; derived in core/rig/README.md#objectives',
  checkedBy: ['microscope-depth'],
} as const satisfies Formula<Inputs>;
