import type { Problem } from '#core/practice/problem.ts';
import { workingNumbers } from '#core/practice/working.ts';
import { fillLine } from '#site/controls/formula/line.ts';
import { formulaLine } from '#site/state/formula-line.ts';

/**
 * The workings of all families stand in the page from the build on, formulas and all; here the one asked for gets
 * the numbers of the reader's problem and is shown.
 */
export function fillWorking(problem: Problem): void {
  hideWorkings();
  const place = document.querySelector<HTMLElement>(`[data-working="${problem.family.id}"]`);
  if (!place) return;
  const steps = [...place.querySelectorAll<HTMLElement>('[data-step]')];
  for (const [index, { formula, note, numbers }] of workingNumbers(problem.family, problem.given).entries()) {
    const step = steps[index]!;
    const words = step.querySelector('[data-note]');
    if (words) words.textContent = note;
    if (formula) fillLine(step.querySelector<HTMLElement>('[data-equation]')!, formulaLine(formula, numbers));
  }
  place.hidden = false;
}

export function hideWorkings(): void {
  for (const place of document.querySelectorAll<HTMLElement>('[data-working]')) place.hidden = true;
}
