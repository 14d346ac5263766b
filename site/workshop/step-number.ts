/** A step of a lesson as one says it in a hall: `4-3`, the third step of the course's fourth lesson; `4-3a` for its answer. */
export const stepNumber = (place: number, step: number, answered: boolean): string =>
  `${place}-${step}${answered ? 'a' : ''}`;

/** The number that somebody typed or an address carries, as it is written; undefined for what is none. */
export function readStepNumber(text: string): string | undefined {
  const [, place, step, a] = /^\s*(\d{1,2})\s*[-–.,/ ]\s*(\d{1,2})\s*(a?)\s*$/i.exec(text) ?? [];
  return place === undefined ? undefined : stepNumber(Number(place), Number(step), a !== '');
}
