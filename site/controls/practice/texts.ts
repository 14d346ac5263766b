import type { ProblemFamily } from '#core/practice/family.ts';

/** The words of a family: they stand in the page from the build on and do not travel again with its functions. */
export interface FamilyTexts {
  readonly question: string;
  readonly hint: string;
  readonly tolerance: string;
  readonly mistakes: readonly string[];
  readonly notes: readonly string[];
}

/** What the built page carries of a family's words. */
export function textsOf(family: ProblemFamily): FamilyTexts {
  return {
    question: family.question,
    hint: family.hint,
    tolerance: family.kind === 'number' ? family.tolerance.because : '',
    mistakes: family.mistakes.map(({ because }) => because),
    notes: family.working.map(({ note = '' }) => note),
  };
}

/** *family* with the words that its place in the page carries. */
export function withTexts(family: ProblemFamily, root: ParentNode): ProblemFamily {
  const json = root.querySelector<HTMLElement>(`[data-working="${family.id}"]`)?.dataset['texts'];
  if (json === undefined) throw new Error(`The page lacks <Workings> with the family ${family.id}.`);
  return saying(family, JSON.parse(json) as FamilyTexts);
}

/** *family* with these words. */
export function saying(family: ProblemFamily, texts: FamilyTexts): ProblemFamily {
  const { question, hint, tolerance, mistakes, notes } = texts;
  return {
    ...family,
    question,
    hint,
    ...(family.kind === 'number' && { tolerance: { ...family.tolerance, because: tolerance } }),
    mistakes: family.mistakes.map((mistake, index) => ({ ...mistake, because: mistakes[index]! })),
    working: family.working.map((step, index) => ({ ...step, note: notes[index]! })),
  } as ProblemFamily;
}
