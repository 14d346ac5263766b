import type { Grounds } from '#core/diagnosis/diagnose.ts';
import { bridges, lastly, needs, setUps, unless, usual } from '#core/diagnosis/usual.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { formulaTopics, type NamedFormula } from '#site/formula-topics.ts';

const problems = import.meta.glob<{ families?: readonly ProblemFamily[] }>('../../lessons/*/problems.ts', {
  eager: true,
});

/** All that an answer can be told from: every formula, and the problems of every lesson. */
export const grounds: Grounds = {
  formulas: [...formulaTopics().flatMap(({ formulas }) => formulas.map(withSetUp)), ...bridges],
  assumptions: usual,
  lastly,
  families: Object.entries(problems).flatMap(([path, { families = [] }]) =>
    families.map((family) => ({ lesson: path.split('/').at(-2)!, family })),
  ),
};

function withSetUp(named: NamedFormula) {
  const setUp = setUps[named.id];
  const not = unless[named.id];
  const of = needs[named.id];
  return { ...named, ...(setUp !== undefined && { setUp }), ...(not && { unless: not }), ...(of && { needs: of }) };
}
