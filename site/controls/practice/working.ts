import { printNumber } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Problem } from '#core/practice/problem.ts';
import { workingNumbers } from '#core/practice/working.ts';

/**
 * The workings of all families stand in the page from the build on, formulas and all; here the one asked for gets
 * the numbers of the reader's problem and is shown.
 */
export function fillWorking(problem: Problem): void {
  hideWorkings();
  const place = document.querySelector<HTMLElement>(`[data-working="${problem.family.id}"]`);
  if (!place) return;
  const steps = [...place.querySelectorAll<HTMLElement>('[data-step]')];
  for (const [index, { note, numbers }] of workingNumbers(problem.family, problem.given).entries()) {
    const step = steps[index]!;
    const words = step.querySelector('[data-note]');
    if (words) words.textContent = note;
    for (const slot of step.querySelectorAll<HTMLElement>('[data-number]')) {
      const id = slot.dataset['number'] as QuantityName;
      slot.textContent = numberWithUnit(id, numbers[id]!);
    }
  }
  place.hidden = false;
}

export function hideWorkings(): void {
  for (const place of document.querySelectorAll<HTMLElement>('[data-working]')) place.hidden = true;
}

/** A number as it stands in a formula. */
export function numberWithUnit(id: QuantityName, value: number): string {
  const { number, unit } = printNumber(id, value);
  return unit === '' ? number : `${number}\u2009${unit}`;
}
