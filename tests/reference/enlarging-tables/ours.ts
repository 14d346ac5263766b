import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';

/** An enlarger is a close-up camera: the negative is the subject, the paper stands where the sensor does. */
export function ours(given: { focalLength: number; magnification: readonly number[] }) {
  const lenses = given.magnification.map((magnification) => ({ focalLength: given.focalLength, magnification }));
  return { imageDistance: lenses.map(imageDistance), subjectDistance: lenses.map(subjectDistance) };
}
