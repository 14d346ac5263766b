/** A step of a lesson by name, as an address carries it: `extension.three-rings`, `extension.three-rings.a` for its answer. */
export const stepName = (lesson: string, step: string, answered: boolean): string =>
  `${lesson}.${step}${answered ? '.a' : ''}`;

/** The place that a step had when the steps of a hall still had numbers: `4-3`, the third of the course's fourth lesson; `4-3a` for its answer. */
export const stepNumber = (place: number, step: string, answered: boolean): string =>
  `${place}-${step}${answered ? 'a' : ''}`;

/** The name or number that somebody typed or an address carries, as it is written; undefined for what is none. What ends a sentence is no part of it. */
export function readStepName(text: string): string | undefined {
  const typed = text.replace(/[\s.,;:!?)\]"'”’…]+$/, '');
  const [, place, number, a] = /^\s*(\d{1,2})\s*[-–.,/ ]\s*(\d{1,2})\s*(a?)$/i.exec(typed) ?? [];
  if (place !== undefined) return stepNumber(Number(place), String(Number(number)), a !== '');
  const [, lesson, step, answer] = /^\s*([a-z][a-z-]+)[\s.,/]+([a-z][a-z\d-]+)(?:[\s.,/]+(a))?$/i.exec(typed) ?? [];
  return lesson === undefined ? undefined : stepName(lesson, step!, answer !== undefined).toLowerCase();
}
