import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { formulaLine } from '#site/state/formula-line.ts';
import { lineFormula } from '#site/state/shown-formulas.ts';
import { numberPatcher, type Printers } from './patch.ts';

/** Keeps the formulas and the numbers in the prose below *root* in step with a bench: those in view, or *all*. */
export function inStep(root: ParentNode): (bench: AnyBench, inProse: Printers['inProse'], all: boolean) => void {
  const patch = numberPatcher(root);
  return (bench, inProse, all) => {
    const { formulas, answers } = bench;
    const line = (name: string) => {
      const formula = lineFormula(name, formulas);
      return formula && formulaLine(formula, answers);
    };
    patch({ line, inProse }, all);
  };
}
