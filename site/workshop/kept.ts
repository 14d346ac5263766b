import { stored, type Stored } from '#site/state/stored.ts';
import { isEvening, noEvening, type Evening } from './evening.ts';
import { emptyPlan, type Plan } from './plan.ts';
import { readPlan, type Steps } from './schema.ts';

/** The instructor's plan, kept on their own machine, and checked against the lessons' *steps* whenever it is read. */
export function keptPlan(steps: Steps): Stored<Plan> {
  return stored<Plan>({
    key: 'workshop',
    words: 'plan of an evening',
    renewed: 'Nothing of it is lost: save what lies there as a file before you remove it.',
    fallback: emptyPlan,
    isValid: (value): value is Plan => value !== undefined,
    upgraded: (value) => {
      const reading = readPlan(value, steps);
      return reading.kind === 'plan' ? reading.plan : undefined;
    },
  });
}

/** Where the evening stands, for the next time that the page is opened. */
export const keptEvening: Stored<Evening> = stored<Evening>({
  key: 'evening',
  words: 'place in the evening',
  renewed: 'It starts at the first step.',
  fallback: noEvening,
  isValid: isEvening,
});
