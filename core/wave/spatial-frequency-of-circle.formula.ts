import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion';

/**
 * The spatial frequency that a circle of confusion stands for: one line as wide as the circle and one gap as wide.
 *
 * ν = 1/(2c)
 *
 * @param given.circleOfConfusion *c*, largest blur on the sensor still called sharp, mm; above 0
 * @returns *ν*, line pairs per millimetre on the sensor. A choice made visible, not a law: others take 1/c.
 * @throws OutOfRange for a circle not finite and above zero
 *
 * Source: our convention, said wherever it is used. See [README](README.md#best).
 *
 * @example spatialFrequencyOfCircle({ circleOfConfusion: 0.02 }) // 25
 */
export function spatialFrequencyOfCircle({ circleOfConfusion }: Named<Inputs>): number {
  return 1 / (2 * requirePositive('circle-of-confusion', circleOfConfusion));
}

export const spatialFrequencyOfCircleFormula = {
  gives: 'spatial-frequency',
  from: ['circle-of-confusion'],
  tex: String.raw`\q{spatial-frequency} = \frac{1}{2\,\q{circle-of-confusion}}`,
  evaluate: spatialFrequencyOfCircle,
  says: 'The circle of confusion as a pattern: lines and gaps each as wide as the circle.',
  source: 'a convention of this workbook, core/wave/README.md#best',
  checkedBy: ['contrast-through-depth', 'resolution-of-pixels'],
} as const satisfies Formula<Inputs>;
