import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import type { QuantityId, QuantityName } from '#core/quantity/vocabulary.ts';
import type { Known } from './text.ts';

/** A formula as a step of the working needs it, whatever it is computed from. */
export type StepFormula = Pick<Formula, 'gives' | 'from' | 'tex'> & { readonly evaluate: (given: never) => number };

/** What a step of the working may build on: all that is given, and what earlier steps gave. */
export type KnownSoFar<Given> = Given & Readonly<Record<QuantityId, number>>;

/** One step of the working: a formula with its numbers, a sentence, or both. */
export interface WorkingStep<Given = Known> {
  /** Shown with its numbers; its result is known to later steps under `gives`. */
  readonly formula?: StepFormula;
  /** Values that the formula or the note needs and that are known by no such name yet, e.g. two rings added up. */
  readonly values?: (known: KnownSoFar<Given>) => Readonly<Record<string, number>>;
  /** What is done and why, with `{id}` marks; it stands before the formula. */
  readonly note?: string;
}

/** A step with the numbers of one problem. */
export interface NumberedStep {
  readonly step: WorkingStep;
  /** What stands in the formula's number slots and what the step adds to what is known, base units by id. */
  readonly numbers: Readonly<Record<string, number>>;
  /** All that is known after it. */
  readonly known: Known;
}

/** The numbers of *steps* one after the other, from what is *given*. Throws what a formula throws, OutOfRange among it. */
export function* numberedSteps(steps: readonly WorkingStep[], given: Known): Generator<NumberedStep> {
  let known = given;
  for (const step of steps) {
    const { formula, values } = step;
    const numbers: Record<string, number> = { ...values?.(known as KnownSoFar<Known>) };
    known = { ...known, ...numbers };
    if (formula) {
      const result = evaluateFormula(formula as Formula<never>, known as Record<QuantityName, number>);
      known = { ...known, [formula.gives]: result };
      for (const id of [...formula.from, formula.gives]) numbers[id] = known[id] as number;
    }
    yield { step, numbers, known };
  }
}

/** What the last formula of *steps* gives. Throws where none has a formula, and what a formula throws. */
export function lastNumber(steps: readonly WorkingStep[], given: Known): number {
  const last = [...numberedSteps(steps, given)].findLast(({ step }) => step.formula);
  if (!last) throw new Error('The working has no formula to give the answer: state the answer, or a formula.');
  return last.numbers[last.step.formula!.gives]!;
}
