import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { KitSubject } from './kit.ts';

/** Throws OutOfRange for a subject that cannot be, RangeError for a budget that is none. */
export function requireSubject(subject: KitSubject, budget: number): void {
  requirePositive('subject-width', subject.subjectWidth);
  requireNotNegative('subject-depth', subject.subjectDepth);
  requireNotNegative('subject-speed', subject.subjectSpeed);
  requirePositive('luminance', subject.luminance);
  requirePositive('iso', subject.iso);
  requirePositive('wavelength', subject.wavelength);
  requireNotNegative('working-distance', subject.nearestDistance);
  requirePositive('exposure-time', subject.longestExposure);
  if (!(subject.leastFill > 0 && subject.leastFill <= 1)) {
    throw new OutOfRange('frame.image-width', subject.leastFill, 'a share above 0 and up to 1');
  }
  if (!(budget >= 0)) throw new RangeError(`the budget is ${budget}; accepted: 0 or above`);
}
