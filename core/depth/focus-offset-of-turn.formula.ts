import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'entrance-pupil-distance' | 'turn-angle';

/**
 * Where a place lies that was sharp in the middle of the picture, once the camera is turned to frame.
 *
 * δ = −u (1 − cos β)
 *
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @param given.turnAngle *β*, by which the camera turns about the entrance pupil, rad; from 0 to π/2
 * @returns *δ*, mm, from the sharp plane along the axis: never above 0, for the place comes to lie before it
 * @throws OutOfRange for a distance not finite and above zero, and for an angle outside
 *
 * Assumes a turn about the entrance pupil. About another point of the axis its distance from the plane stands for *u*: about the sensor the place goes farther.
 * Source: the leg of a right-angled triangle, derived in [README](README.md#turn).
 *
 * @example focusOffsetOfTurn({ entrancePupilDistance: 100, turnAngle: Math.PI / 3 }) // -50.000000...
 */
export function focusOffsetOfTurn({ entrancePupilDistance, turnAngle }: Named<Inputs>): number {
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  if (!(turnAngle >= 0 && turnAngle <= Math.PI / 2)) throw new OutOfRange('turn-angle', turnAngle, 'from 0 to π/2');
  // 1 − cos β written so that small angles keep their digits; 0 rather than −0 for no turn.
  return 0 - 2 * entrancePupilDistance * Math.sin(turnAngle / 2) ** 2;
}

export const focusOffsetOfTurnFormula = {
  gives: 'focus-offset',
  from: ['entrance-pupil-distance', 'turn-angle'],
  tex: String.raw`\q{focus-offset} = -\q{entrance-pupil-distance}\left(1 - \cos \q{turn-angle}\right)`,
  evaluate: focusOffsetOfTurn,
  says: 'Twice the turn puts the place four times as far before the sharp plane.',
  source: 'derived in core/depth/README.md#turn',
  checkedBy: ['leans-turns-and-keepers'],
  // Of small angles the difference from 1 loses its digits.
  sample: { 'turn-angle': [0.02, 0.5] },
} as const satisfies Formula<Inputs>;
