import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'f-number';

/**
 * How many stops of light are lost against what the marked f-number promises.
 *
 * 2 log2(N_w/N)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above 0
 * @param given.fNumber *N*, marked on the lens whose stop limits that cone, above 0
 * @returns stops; negative where the cone is wider than marked, a gain. A meter behind the lens has already counted it.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Leaves out what the glass absorbs and reflects.
 * Source: illuminance goes as 1/N_w², and a stop is a factor of two in light. See [README](README.md#light).
 *
 * @example lightLoss({ effectiveFNumber: 16, fNumber: 8 }) // 2
 */
export function lightLoss({ effectiveFNumber, fNumber }: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('f-number', fNumber);
  return 2 * Math.log2(effectiveFNumber / fNumber);
}

export const lightLossFormula = {
  gives: 'light-loss',
  from: ['effective-f-number', 'f-number'],
  tex: String.raw`\q{light-loss} = 2\log_2\frac{\q{effective-f-number}}{\q{f-number}}`,
  evaluate: lightLoss,
  says: 'Each doubling of the f-number costs two stops, whether you dial it in or the extension does.',
  source: 'a stop is a factor of two in light, and illuminance goes as one over the square of the f-number',
  checkedBy: ['common-practice', 'common-practice-exposure', 'exposure-increase', 'working-f-number'],
} as const satisfies Formula<Inputs>;
