import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { KnownSoFar, ProblemFamily, StepFormula } from './family.ts';
import { filledText, type Known } from './text.ts';

/** One step of the working with the numbers of one problem. */
export interface WorkedStep {
  /** The formula that the step shows, if any; the same object at the same place for every problem of the family. */
  readonly formula?: StepFormula;
  /** The sentence before it with its numbers; '' where there is none. */
  readonly note: string;
  /** What stands in the formula's number slots and what the step adds to what is known, base units by id. */
  readonly numbers: Readonly<Record<string, number>>;
}

/**
 * The whole working of a problem of *family* with these numbers: what each step says and the number in each of its slots.
 *
 * @throws OutOfRange from the formula that lacks a number, and Error from the note that does: the family's working is incomplete
 */
export function workingNumbers(family: ProblemFamily, given: Known): readonly WorkedStep[] {
  let known = given;
  return family.working.map(({ formula, values, note = '' }) => {
    const numbers: Record<string, number> = { ...values?.(known as KnownSoFar<Known>) };
    known = { ...known, ...numbers };
    if (formula) {
      const result = evaluateFormula(formula as Formula<never>, known as Record<QuantityName, number>);
      known = { ...known, [formula.gives]: result };
      for (const id of [...formula.from, formula.gives]) numbers[id] = known[id] as number;
    }
    return { ...(formula && { formula }), note: filledText(note, known), numbers };
  });
}
