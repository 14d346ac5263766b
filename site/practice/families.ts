import { textsOf } from 'virtual:problem-texts';
import type { ProblemFamily } from '#core/practice/family.ts';
import type { SheetKind, SheetProblem } from '#core/practice/versions.ts';
import { saying } from '#site/controls/practice/texts.ts';
import { drawnFrom, type SheetPlan } from './sheet.ts';

const problems = import.meta.glob<{ families: readonly ProblemFamily[] }>('../../lessons/*/problems.ts');

/** The equation of a step: by the name of its file, or in letters and with places for its numbers. */
export type StepEquation = string | readonly [letters: string, numbers: string] | null;

const equations = new WeakMap<ProblemFamily, readonly StepEquation[]>();

const fetched = new Map<string, Promise<readonly SheetKind[]>>();

/** The families of these lessons with all their words, fetched once. Rejects where the network does not give them; asked again, it tries again. */
export async function familiesOf(lessons: readonly string[]): Promise<readonly SheetKind[]> {
  return (await Promise.all(lessons.map(once))).flat();
}

function once(lesson: string): Promise<readonly SheetKind[]> {
  const known = fetched.get(lesson);
  if (known) return known;
  const asked = fetchLesson(lesson);
  fetched.set(lesson, asked);
  asked.catch(() => fetched.delete(lesson));
  return asked;
}

async function fetchLesson(lesson: string): Promise<readonly SheetKind[]> {
  const [{ families }, { texts }] = await Promise.all([
    problems[`../../lessons/${lesson}/problems.ts`]!(),
    textsOf[lesson]!(),
  ]);
  return families.map((bare) => {
    const family = saying(bare, texts[bare.id]!);
    equations.set(family, texts[bare.id]!.equations);
    return { lesson, family };
  });
}

/** The equations of a family that {@link familiesOf} has given, step by step. */
export function equationsOf(family: ProblemFamily): readonly StepEquation[] {
  return equations.get(family) ?? [];
}

/** The problems of a sheet, with all their words: its lessons are fetched first. See `drawnFrom`. */
export async function problemsOn(plan: SheetPlan): Promise<readonly SheetProblem[]> {
  return drawnFrom(plan, await familiesOf([...new Set(plan.kinds.map(({ lesson }) => lesson))]));
}
