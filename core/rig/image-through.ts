import { OutOfRange, requireFinite } from '#core/quantity/errors.ts';
import { glassMatrix } from './glass-matrix.ts';
import type { Surface } from './prescription.ts';

/** The image of a point on the axis. */
export interface GlassImage {
  /** From the last vertex, mm, positive towards the sensor; negative for a virtual image. */
  readonly imageDistance: number;
  /** Negative for an image upside down. */
  readonly magnification: number;
}

/**
 * Where surfaces image a subject, and how large, in any media.
 *
 * n'/s' = n/s + (n' − n)/r at each surface, s' in turn the next one's s
 *
 * @param surfaces one or more; the index behind a mirror is that before it, negative, and lengths behind it are too
 * @param subjectDistance in front of the first vertex, mm; above 0 for a real subject
 * @param indexBefore of the medium in front, 1 for air
 * @returns image distance and magnification, which holds the ratio of the indices
 * @throws OutOfRange for a subject infinitely far away, which has no size to magnify; for one in the focal plane, whose image is nowhere; for surfaces that are none
 *
 * Assumes paraxial rays. Source: OpenStax, University Physics Vol. 3, section 2.3 (spherical refracting surfaces).
 *
 * @example imageThrough([{ radius: 800, thickness: 0, index: 1.5 }], 300).imageDistance // -553.846...
 */
export function imageThrough(surfaces: readonly Surface[], subjectDistance: number, indexBefore = 1): GlassImage {
  requireFinite('subject-distance', subjectDistance);
  const { A, B, C, D } = glassMatrix(surfaces, 0, surfaces.length, indexBefore);
  const reduced = subjectDistance / indexBefore;
  const slope = C * reduced + D;
  if (!(Math.abs(slope) > 1e-12)) {
    throw new OutOfRange('subject-distance', subjectDistance, 'a finite number that is not the focal length’s');
  }
  const indexBehind = surfaces.at(-1)?.index ?? indexBefore;
  const imageDistance = (-(A * reduced + B) / slope) * indexBehind;
  return { imageDistance: requireFinite('image-distance', imageDistance), magnification: 1 / slope };
}
