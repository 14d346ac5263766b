import { circleOfConfusionByWidthFormula } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import { filledBy, type ChoicePlan } from './choice.ts';
import { bodies } from './crate.ts';

/** The choice by which a bench's circle of confusion follows from the body, and its option that does. */
export const circleChoice = 'circle-of-confusion-by';
export const byBody = 'width';

/** The choice that keeps a bench's circle of confusion with its body until the reader sets another. It is said beside the input, not as a list. */
export const circleByBody: ChoicePlan<'sensor-width' | 'circle-of-confusion'> = {
  label: 'Circle of confusion',
  quiet: true,
  options: { [byBody]: { label: 'the body’s', fills: filledBy(circleOfConfusionByWidthFormula) } },
};

/** What problems put into their questions: the circles of the crate's bodies, as they are printed. */
export const circlesOfBodies: readonly number[] = Object.values(bodies).map((body) =>
  Number(body['circle-of-confusion'].toPrecision(3)),
);
