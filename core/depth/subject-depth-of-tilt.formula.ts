import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'subject-width' | 'subject-tilt';

/**
 * The depth that a flat subject takes up because it is tilted.
 *
 * Z = length · sin τ
 *
 * @param given.subjectWidth length of the flat subject in the direction of the tilt, mm; above 0
 * @param given.subjectTilt *τ*, between subject and sensor plane, rad; from 0 to π/2
 * @returns *Z*, mm; 0 for a subject square to the axis.
 * @throws OutOfRange for a length not finite and above zero, and for a tilt outside
 *
 * Source: definition of the sine. Derived in [README](README.md#tilt).
 *
 * @example subjectDepthOfTilt({ subjectWidth: 20, subjectTilt: Math.PI / 6 }) // 10
 */
export function subjectDepthOfTilt({ subjectWidth, subjectTilt }: Named<Inputs>): number {
  requirePositive('subject-width', subjectWidth);
  if (!(subjectTilt >= 0 && subjectTilt <= Math.PI / 2))
    throw new OutOfRange('subject-tilt', subjectTilt, 'from 0 to π/2');
  return subjectWidth * Math.sin(subjectTilt);
}

export const subjectDepthOfTiltFormula = {
  gives: 'subject-depth',
  from: ['subject-width', 'subject-tilt'],
  tex: String.raw`\q{subject-depth} = \q{subject-width}\sin \q{subject-tilt}`,
  evaluate: subjectDepthOfTilt,
  says: 'Turn the sensor towards the subject before you stop down or stack.',
  source: 'definition of the sine',
  checkedBy: ['leans-turns-and-keepers', 'shadows-and-views'],
} as const satisfies Formula<Inputs>;
