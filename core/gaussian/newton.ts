import { requirePositive } from '#core/quantity/errors.ts';

/** A subject *x* in front of the front focal point F, not of H. */
export interface BeyondFocus {
  /** *f*, mm, above 0 */
  readonly focalLength: number;
  /** *x*, from F towards the subject, mm, above 0 */
  readonly subjectBeyondFocus: number;
}

/**
 * How far behind the rear focal point F′ the image lies, by Newton's form of the lens equation.
 *
 * x' = f²/x
 *
 * @param given see {@link BeyondFocus}
 * @returns *x'*, mm, from F′ towards the sensor: the extension beyond the infinity setting
 * @throws OutOfRange for anything not finite and above zero; a subject within F has no real image
 *
 * Source: OpenStax, University Physics Vol. 3, section 2.4, with distances counted from the focal points. Derived in
 * [README](README.md#newton).
 *
 * @example imageBeyondFocus({ focalLength: 50, subjectBeyondFocus: 100 }) // 25
 */
export function imageBeyondFocus({ focalLength, subjectBeyondFocus }: BeyondFocus): number {
  requirePositive('focal-length', focalLength);
  requirePositive('subject-distance', subjectBeyondFocus);
  return focalLength ** 2 / subjectBeyondFocus;
}

/**
 * The magnification of a subject whose distance is counted from the front focal point.
 *
 * m = f/x
 *
 * @param given see {@link BeyondFocus}
 * @returns *m*, a pure number
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: as {@link imageBeyondFocus}; derived in [README](README.md#newton).
 *
 * @example magnificationBeyondFocus({ focalLength: 50, subjectBeyondFocus: 100 }) // 0.5
 */
export function magnificationBeyondFocus({ focalLength, subjectBeyondFocus }: BeyondFocus): number {
  requirePositive('focal-length', focalLength);
  requirePositive('subject-distance', subjectBeyondFocus);
  return focalLength / subjectBeyondFocus;
}
