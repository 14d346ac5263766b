import type { ProblemFamily } from '#core/practice/family.ts';
import { parts } from '#site/lesson/parts.ts';
import { formulaCalled, type AnyFormula, type Lesson } from '#site/lesson/lesson.ts';

/** A heading of a lesson, as the page has it. */
export interface Heading {
  readonly text: string;
  readonly slug: string;
}

/**
 * The place in a lesson's page that teaches what *family* asks: where the formula that gives the answer stands, under the nearest heading;
 * where no formula gives it, or the lesson shows it nowhere by itself, how it works.
 */
export function placeThatMends(
  prose: string,
  headings: readonly Heading[],
  family: ProblemFamily,
  lesson: Lesson,
): Heading {
  const formula = family.working.findLast((step) => step.formula)?.formula;
  const [, part = ''] = /<Part is="formula"[^>]*>(.*?)<\/Part>/s.exec(prose) ?? [];
  let place: Heading = { text: parts.formula, slug: 'formula' };
  for (const [, heading, name] of part.matchAll(/^### (.*)$|<Formula of="([^"]+)"/gm)) {
    if (heading !== undefined) place = headings.find(({ text }) => text === heading.trim()) ?? place;
    else if (formula && isSame(formulaCalled(name!, lesson), formula)) return place;
  }
  return { text: parts.idea, slug: 'idea' };
}

function isSame(one: AnyFormula, other: Pick<AnyFormula, 'tex' | 'gives'>): boolean {
  return one.tex === other.tex && one.gives === other.gives;
}
