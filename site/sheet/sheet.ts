import { formulaTopics, type NamedFormula } from '#site/formula-topics.ts';
import { subjects } from './questions.ts';

/** A formula as the sheet has it. */
export interface SheetFormula extends NamedFormula {
  readonly name: string;
}

export interface SheetQuestion {
  /** Its place in the page. */
  readonly id: string;
  readonly asks: string;
  /** The lesson of the course whose subject it is, by slug; none where no lesson goes so far. */
  readonly taughtIn: string | undefined;
  readonly formulas: readonly SheetFormula[];
}

export interface SheetSubject {
  readonly id: string;
  readonly asks: string;
  readonly questions: readonly SheetQuestion[];
}

/** Every formula of the core under what a photographer wants to know; what has no question yet stands at the end. Throws on an unknown name. */
export function formulaSheet(): readonly SheetSubject[] {
  const left = new Map(formulaTopics().flatMap(({ formulas }) => formulas.map((one) => [one.id, one])));
  const asked = subjects.map(({ id, asks, questions }) => ({
    id,
    asks,
    questions: questions.map(({ formulas, ...question }, index) => ({
      ...question,
      id: `${id}-${index + 1}`,
      formulas: Object.entries(formulas).map(([id, name]) => {
        const found = left.get(id);
        if (!found) throw new Error(`site/sheet/questions.ts names ${id}, which is no formula, or names it twice.`);
        left.delete(id);
        return { ...found, name };
      }),
    })),
  }));
  if (left.size === 0) return asked;
  const others = [...left.values()].map((one) => ({ ...one, name: fileAsName(one.id) }));
  const question = { id: 'what-else-1', asks: 'What other formulas run here?', taughtIn: undefined, formulas: others };
  return [...asked, { id: 'what-else', asks: 'What else?', questions: [question] }];
}

const names = new Map(
  subjects.flatMap(({ questions }) => questions.flatMap(({ formulas }) => Object.entries(formulas))),
);

/** What readers know a formula by: `effective-f-number-of-objective` is `Effective f-number of a microscope objective`. */
export function formulaName(id: string): string {
  return names.get(id) ?? fileAsName(id);
}

/** A formula's source for a reader: the notes beside the code are called so, without their path. */
export function sourceInWords(source: string): string {
  return source.replace(/\bcore\/\w+\/README\.md(?:#[\w-]+)?/g, 'the workbook’s own notes');
}

function fileAsName(id: string): string {
  return id
    .replaceAll('-', ' ')
    .replace(/\bf number\b/g, 'f-number')
    .replace(/\bclose up\b/g, 'close-up')
    .replace(/\biso\b/g, 'ISO')
    .replace(/^./, (first) => first.toUpperCase());
}
