import type { Grounds } from '#core/diagnosis/diagnose.ts';
import { bridges, lastly, setUps, usual } from '#core/diagnosis/usual.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import type { Formula } from '#core/quantity/formula.ts';

const formulas = import.meta.glob<Record<string, unknown>>('../../core/*/*.formula.ts', { eager: true });
const problems = import.meta.glob<{ families?: readonly ProblemFamily[] }>('../../lessons/*/problems.ts', {
  eager: true,
});

/** All that an answer can be told from: every formula, and the problems of every lesson. */
export const grounds: Grounds = {
  formulas: [...Object.entries(formulas).map(([path, exports]) => named(path, exports)), ...bridges],
  assumptions: usual,
  lastly,
  families: Object.entries(problems).flatMap(([path, { families = [] }]) =>
    families.map((family) => ({ lesson: path.split('/').at(-2)!, family })),
  ),
};

function named(path: string, exports: Record<string, unknown>) {
  const id = path.slice(path.lastIndexOf('/') + 1).replace('.formula.ts', '');
  const formula = Object.entries(exports).find(([name]) => name.endsWith('Formula'))![1] as Formula<never>;
  const setUp = setUps[id];
  return { id, formula, ...(setUp !== undefined && { setUp }) };
}
