import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'entrance-pupil';

/**
 * The f-number of a lens whose entrance pupil is known.
 *
 * N = f/D
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.entrancePupil *D*, diameter at that setting, mm, above 0
 * @returns *N*: the marked number at infinity focus; the number to put into formulas at any other setting of a lens that
 *   focuses internally. Not the effective f-number.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of the f-number. See [README](README.md#pupils).
 *
 * @example fNumberFromAperture({ focalLength: 100, entrancePupil: 25 }) // 4
 */
export function fNumberFromAperture({ focalLength, entrancePupil }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('entrance-pupil', entrancePupil);
  return focalLength / entrancePupil;
}

export const fNumberFromApertureFormula = {
  gives: 'f-number',
  from: ['focal-length', 'entrance-pupil'],
  tex: String.raw`\q{f-number} = \frac{\q{focal-length}}{\q{entrance-pupil}}`,
  evaluate: fNumberFromAperture,
  says: 'How many times the width of the opening fits into the focal length.',
  source: 'definition of the f-number',
  checkedBy: ['f-number-definition', 'working-f-number'],
} as const satisfies Formula<Inputs>;
