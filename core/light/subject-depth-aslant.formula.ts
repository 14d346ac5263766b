import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'field-width' | 'incidence-angle';

/**
 * How far a flat subject that is seen aslant recedes across the picture.
 *
 * Z = W tan θ
 *
 * @param given.fieldWidth *W*, of the subject in the picture, measured in the sharp plane, mm, above 0
 * @param given.incidenceAngle *θ*, between the axis and the normal of the subject, rad, from 0 to below π/2
 * @returns *Z*, mm, along the axis, from one side of the picture to the other; 0 for a subject seen squarely
 * @throws OutOfRange for a width not finite and above zero, and for an angle outside: at π/2 the subject is seen edge-on
 *
 * Assumes that sides are counted in the sharp plane, as far apart as the field is wide. A lens that is near sees the far side of a plane recede farther and the near side less.
 * Source: definition of the tangent. Derived in [README](README.md#a-flat-mirror).
 *
 * @example subjectDepthAslant({ fieldWidth: 72, incidenceAngle: Math.PI / 4 }) // 72
 */
export function subjectDepthAslant({ fieldWidth, incidenceAngle }: Named<Inputs>): number {
  requirePositive('field-width', fieldWidth);
  requireNotNegative('incidence-angle', incidenceAngle);
  if (incidenceAngle >= Math.PI / 2) throw new OutOfRange('incidence-angle', incidenceAngle, 'less than a right angle');
  return fieldWidth * Math.tan(incidenceAngle);
}

export const subjectDepthAslantFormula = {
  gives: 'subject-depth',
  from: ['field-width', 'incidence-angle'],
  tex: String.raw`\q{subject-depth} = \q{field-width}\tan(\q{incidence-angle})`,
  evaluate: subjectDepthAslant,
  says: 'A flat subject seen aslant is deep: at 45° as deep as the picture is wide.',
  source: 'derived in core/light/README.md#a-flat-mirror',
  checkedBy: ['mirrored-fields', 'slopes'],
  sample: { 'incidence-angle': [0, 1.5] },
} as const satisfies Formula<Inputs>;
