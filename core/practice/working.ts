import type { ProblemFamily } from './family.ts';
import { numberedSteps, type StepFormula } from './step.ts';
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
  return Array.from(numberedSteps(family.working, given), ({ step: { formula, note = '' }, numbers, known }) => ({
    ...(formula && { formula }),
    note: filledText(note, known),
    numbers,
  }));
}
