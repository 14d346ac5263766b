import { firstSteps } from '#site/stage/first-steps.ts';
import { withParameter } from '#site/state/address.ts';
import { stepIn, type Catalogue, type ListedStep } from './catalogue.ts';
import { stepName, stepNumber } from './step-number.ts';

/** The query that sets a lesson's own page as a step sets its figure, not projected. */
export function settingOf(step: ListedStep, answered: boolean): string {
  return ['stage', 'answered'].reduce(
    (search, name) => withParameter(search, name, undefined),
    answered ? step.answered : step.asked,
  );
}

/** Where each step's name leads, within the site. */
export function addressesByName(catalogue: Catalogue): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.values(catalogue).flatMap(({ slug, path, steps }) =>
      steps.flatMap((step) =>
        [false, true].map((answered) => [stepName(slug, step.id, answered), `${path}${settingOf(step, answered)}`]),
      ),
    ),
  );
}

/** The names of steps by the numbers that they had in halls; '' for a step that has gone since. */
export function namesByNumber(catalogue: Catalogue): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(firstSteps).flatMap(([lesson, steps], at) =>
      steps.flatMap((step, index) =>
        [false, true].map((answered) => [
          stepNumber(at + 1, String(index + 1), answered),
          catalogue[lesson] && stepIn(catalogue, { lesson, step }) ? stepName(lesson, step, answered) : '',
        ]),
      ),
    ),
  );
}
