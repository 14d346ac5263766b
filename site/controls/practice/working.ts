import type { Problem } from '#core/practice/problem.ts';
import { workingNumbers } from '#core/practice/working.ts';
import { fillLine } from '#site/controls/formula/line.ts';
import { formulaLine } from '#site/state/formula-line.ts';
import { hideWorkings } from './hide-workings.ts';

const placeOf = ({ family }: Problem) => document.querySelector<HTMLElement>(`[data-working="${family.id}"]`);

/** Puts the numbers of *problem* into the steps of its family's working. */
function fill(steps: readonly HTMLElement[], problem: Problem): void {
  for (const [index, { formula, note, numbers }] of workingNumbers(problem.family, problem.given).entries()) {
    const step = steps[index]!;
    const words = step.querySelector('[data-note]');
    if (words) words.textContent = note;
    if (formula) fillLine(step.querySelector<HTMLElement>('[data-equation]')!, formulaLine(formula, numbers));
  }
}

const stepsIn = (place: ParentNode) => [...place.querySelectorAll<HTMLElement>('[data-step]')];

/**
 * The workings of all families stand in the page from the build on, formulas and all; here the one asked for gets
 * the numbers of the reader's problem and is shown, right below the button that asked for it.
 */
export function fillWorking(problem: Problem): void {
  hideWorkings();
  const place = placeOf(problem);
  if (!place) return;
  fill(stepsIn(place), problem);
  document.querySelector('.practice .actions')?.after(place);
  place.hidden = false;
  place.scrollIntoView({ block: 'nearest' });
}

/** The steps of the working once more, with the numbers of *problem*: for a key, where many stand together. */
export function workedCopy(problem: Problem): readonly HTMLElement[] {
  const place = placeOf(problem);
  const steps = place ? stepsIn(place.cloneNode(true) as HTMLElement) : [];
  fill(steps, problem);
  return steps;
}
