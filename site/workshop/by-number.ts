import { withParameter } from '#site/state/address.ts';
import type { Catalogue, ListedStep } from './catalogue.ts';
import { stepNumber } from './step-number.ts';

/** The query that sets a lesson's own page as a step sets its figure, not projected. */
export function settingOf(step: ListedStep, answered: boolean): string {
  return ['stage', 'answered'].reduce(
    (search, name) => withParameter(search, name, undefined),
    answered ? step.answered : step.asked,
  );
}

/** Where each number leads, within the site. */
export function addressesByNumber(catalogue: Catalogue): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.values(catalogue).flatMap(({ place, path, steps }) =>
      steps.flatMap((step, index) =>
        [false, true].map((answered) => [
          stepNumber(place, index + 1, answered),
          `${path}${settingOf(step, answered)}`,
        ]),
      ),
    ),
  );
}
