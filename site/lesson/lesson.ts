import type { ProblemFamily } from '#core/practice/family.ts';
import type { Formula } from '#core/quantity/formula.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import type { StageStep } from '#site/stage/step.ts';
import type { Answer } from '#site/state/answer.ts';

/** A lesson's folder as data, for what its prose is made of. */
export interface Lesson {
  readonly slug: string;
  readonly bench: AnyBench;
  readonly families: readonly ProblemFamily[];
  readonly stage: readonly StageStep[];
  /** What its figure is given while the site is built, where it is given anything. */
  readonly given?: object;
}

/** What a figure is set to: inputs by id, choices by name. */
export type Step = Readonly<Record<string, number | string>>;
export type AnyFormula = Formula<never>;

type Files<Exports> = Readonly<Record<string, Exports>>;
const benches: Files<{ bench: AnyBench }> = import.meta.glob('../../lessons/*/bench.svelte.ts', { eager: true });
const problems: Files<Pick<Lesson, 'families'>> = import.meta.glob('../../lessons/*/problems.ts', { eager: true });
const stages: Files<Pick<Lesson, 'stage'>> = import.meta.glob('../../lessons/*/stage.ts', { eager: true });
const givens: Files<{ given: object }> = import.meta.glob('../../lessons/*/figures/given.ts', { eager: true });
const formulas: Files<Record<string, unknown>> = import.meta.glob('../../core/*/*.formula.ts', { eager: true });

/** The lesson in the folder *slug*. Throws where a file of it is missing. */
export function lessonIn(slug: string): Lesson {
  const of = <Exports>(files: Files<Exports>, name: string) => {
    const found = files[`../../lessons/${slug}/${name}`];
    if (found === undefined)
      throw new Error(`lessons/${slug}/ has no ${name}: npm run scaffold writes one to begin with.`);
    return found;
  };
  const { bench } = of(benches, 'bench.svelte.ts');
  const given = givens[`../../lessons/${slug}/figures/given.ts`];
  return {
    slug,
    bench,
    families: of(problems, 'problems.ts').families,
    stage: of(stages, 'stage.ts').stage,
    ...given,
  };
}

/** The formula by which a lesson's bench gives *name*, else the one whose file is called that: `magnification-from-field`. */
export function formulaCalled(name: string, { slug, bench }: Lesson): AnyFormula {
  const own = bench.formulas.find((step) => step.gives === name && 'tex' in step);
  if (own) return own as unknown as AnyFormula;
  const [path] = Object.keys(formulas).filter((file) => file.endsWith(`/${name}.formula.ts`));
  const found = Object.entries(path === undefined ? {} : formulas[path]!).find(([key]) => key.endsWith('Formula'));
  if (found) return found[1] as AnyFormula;
  throw new Error(
    `lessons/${slug}/lesson.mdx: <Formula of="${name}">: the bench gives no ${name} by a formula and there is no core/*/${name}.formula.ts.`,
  );
}

/** The name of the file that a formula comes from: `magnification-from-field`; undefined for one that stands in no file by itself. */
export function fileOfFormula(formula: AnyFormula): string | undefined {
  const [path] = Object.entries(formulas).find(([, exports]) => Object.values(exports).includes(formula)) ?? [];
  return path && /([^/]+)\.formula\.ts$/.exec(path)?.[1];
}

/** The numbers that the prose shows: those of the figure at its start, or as a step of the projected view would set it. */
export function numbersInProse({ bench }: Lesson, set: Step = {}): Readonly<Record<string, Answer>> {
  return bench.atStep(set);
}
