import type { LineFormula } from '#core/quantity/printed-line.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** The formulas that a page's prose shows and its bench does not go by, by the name that the prose calls them. */
const others: Record<string, LineFormula> = {};

/** Tells the page of formulas that its prose calls by the names of their files. */
export function alsoShown(formulas: Readonly<Record<string, LineFormula>>): void {
  Object.assign(others, formulas);
}

/** The formula that a line in the page is of: what its bench gives by one, or one of the others. */
export function lineFormula(name: string, steps: readonly object[]): LineFormula | undefined {
  return (steps as readonly LineFormula[]).find(({ gives }) => gives === (name as QuantityName)) ?? others[name];
}
