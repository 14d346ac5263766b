import { withParameter } from '#site/state/address.ts';
import type { Catalogue, ListedStep } from './catalogue.ts';

/** A step of a lesson as one says it in a hall: `4-3`, the third step of the course's fourth lesson; `4-3a` for its answer. */
export const stepNumber = (place: number, step: number, answered: boolean): string =>
  `${place}-${step}${answered ? 'a' : ''}`;

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

/** The number that somebody typed or an address carries, as it is written; undefined for what is none. */
export function readStepNumber(text: string): string | undefined {
  const [, place, step, a] = /^\s*(\d{1,2})\s*[-–.,/ ]\s*(\d{1,2})\s*(a?)\s*$/i.exec(text) ?? [];
  return place === undefined ? undefined : stepNumber(Number(place), Number(step), a !== '');
}
