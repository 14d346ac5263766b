import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'subject-width' | 'depth-of-field' | 'subject-tilt';

/**
 * How much of a leaning flat subject is within the depth of field, measured along it.
 *
 * sharp width = min(length, T / sin τ)
 *
 * @param given.subjectWidth length of the flat subject in the direction of the tilt, mm; above 0
 * @param given.depthOfField *T*, mm; above 0, `Infinity` where the sharp part has no far end
 * @param given.subjectTilt *τ*, between subject and sensor plane, rad; from 0 to π/2
 * @returns mm along the subject, at most its length: all of it where it is square to the axis
 * @throws OutOfRange for a length or a depth that is not above zero, and for a tilt outside
 *
 * Assumes a subject that runs through the whole depth of field if it is long enough: its middle not far from the sharp plane.
 * Source: definition of the sine. Derived in [README](README.md#tilt).
 *
 * @example sharpWidthOfTilt({ subjectWidth: 30, depthOfField: 2, subjectTilt: Math.PI / 6 }) // 4
 */
export function sharpWidthOfTilt({ subjectWidth, depthOfField, subjectTilt }: Named<Inputs>): number {
  requirePositive('subject-width', subjectWidth);
  if (!(depthOfField > 0)) throw new OutOfRange('depth-of-field', depthOfField, 'above 0, or infinite');
  if (!(subjectTilt >= 0 && subjectTilt <= Math.PI / 2))
    throw new OutOfRange('subject-tilt', subjectTilt, 'from 0 to π/2');
  return Math.min(subjectWidth, depthOfField / Math.sin(subjectTilt));
}

export const sharpWidthOfTiltFormula = {
  gives: 'sharp.subject-width',
  from: ['subject-width', 'depth-of-field', 'subject-tilt'],
  tex: String.raw`\q{sharp.subject-width} = \min\left(\q{subject-width}, \frac{\q{depth-of-field}}{\sin \q{subject-tilt}}\right)`,
  evaluate: sharpWidthOfTilt,
  says: 'A flat subject is sharp for as far as its slope stays within the depth of field.',
  source: 'definition of the sine',
  checkedBy: ['leans-turns-and-keepers'],
  // Square to the axis, or as good as that, the quotient has no value to print, and all of the subject is sharp.
  holds: ({ depthOfField, subjectTilt }) => subjectTilt > 1e-4 && depthOfField < Infinity,
  sample: { 'subject-width': [0.05, 2000], 'depth-of-field': [0.01, 200], 'subject-tilt': [0.001, Math.PI / 2] },
} as const satisfies Formula<Inputs>;
