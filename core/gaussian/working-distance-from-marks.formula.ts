import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focus-distance' | 'register-distance' | 'barrel-length';

/**
 * The free space in front of a lens, from the distance on its ring and the length of its barrel.
 *
 * w = L − R − barrel
 *
 * @param given.focusDistance *L*, sensor to subject, mm, above 0
 * @param given.registerDistance *R*, sensor to flange, mm, above 0
 * @param given.barrelLength from the flange to the front rim at the setting in use, mm, above 0
 * @returns *w*, mm. Zero or negative is an answer: the distance on the ring ends within the barrel.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Holds for any lens, however it focuses; distances on rings are rounded.
 * Source: the distances as they lie along the axis. See [README](README.md#distances).
 *
 * @example workingDistanceFromMarks({ focusDistance: 440, registerDistance: 44, barrelLength: 32 }) // 364
 */
export function workingDistanceFromMarks({ focusDistance, registerDistance, barrelLength }: Named<Inputs>): number {
  requirePositive('focus-distance', focusDistance);
  requirePositive('register-distance', registerDistance);
  requirePositive('barrel-length', barrelLength);
  return focusDistance - registerDistance - barrelLength;
}

export const workingDistanceFromMarksFormula = {
  gives: 'working-distance',
  from: ['focus-distance', 'register-distance', 'barrel-length'],
  tex: String.raw`\q{working-distance} = \q{focus-distance} - \q{register-distance} - \q{barrel-length}`,
  evaluate: workingDistanceFromMarks,
  says: 'The distance on the ring counts from the sensor: take off the camera’s register and the lens’s barrel.',
  source: 'the distances as they lie along the axis',
  checkedBy: ['marks-in-matrices'],
} as const satisfies Formula<Inputs>;
