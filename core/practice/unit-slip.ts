import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { NumberProblem } from './problem.ts';
import { isWithin, marginAt } from './tolerance.ts';

/** Slips of unit worth recognising, and what they usually are in a length. */
const lengthSteps = new Map([
  [10, 'mm and cm'],
  [25.4, 'mm and inches'],
  [100, 'cm and m'],
  [1000, 'mm and m, or µm and mm'],
]);

/** The greatest factor that counts as a slip of unit. */
export const greatestSlip = 1000;

/** A slip of unit: the right figures, but *factor* times the answer. */
export interface UnitSlip {
  readonly kind: 'unit-slip';
  readonly factor: number;
  readonly words: string;
}

/** The slip of unit that *value* shows, if it shows one. */
export function unitSlip({ family, answer }: NumberProblem, value: number): UnitSlip | undefined {
  const { asks, tolerance } = family;
  // Where the margin is nearly as wide as the answer, ten times as much is no longer the same figures.
  if (!(marginAt(answer, tolerance) <= Math.abs(answer) / 10)) return undefined;
  const isLength = quantityOf(asks).base === 'mm';
  for (const [step, between] of lengthSteps) {
    for (const factor of [step, 1 / step]) {
      if (!isWithin(value / factor, answer, tolerance) || (step === 25.4 && !isLength)) continue;
      const size = `${step} times too ${factor > 1 ? 'large' : 'small'}`;
      const cause = isLength ? `: the difference between ${between}.` : '. Look for a unit or a decimal point.';
      return { kind: 'unit-slip', factor, words: `The figures are right, but ${size}${cause}` };
    }
  }
  return undefined;
}
