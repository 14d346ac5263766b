import type { Rig } from './rig.ts';

/** A rig as one thick lens in air. */
export interface CardinalPoints {
  /** *f*, mm; negative where two positive lenses stand so far apart that the whole one spreads parallel light. */
  readonly focalLength: number;
  /** *h*, from the foremost surface back to H, mm. */
  readonly frontPrincipalDepth: number;
  /** *HH'*, mm. */
  readonly principalSeparation: number;
  /** *s'*, from H' to the sensor, mm. */
  readonly imageDistance: number;
}

/**
 * The rig as one lens: its focal length and its principal planes.
 *
 * [[A, B], [C, D]] from the sensor to the front: f = −1/C, h = (A − 1)/C, s' = (D − 1)/C
 *
 * @param rig see `assembleRig`
 * @returns the cardinal points, or null for a rig that has none: an afocal one, such as an objective that stands just the sum of the
 *   focal lengths from its tube lens
 *
 * Source: Gerrard and Burch, Introduction to Matrix Methods in Optics (from memory). Derived in [README](README.md#the-engine).
 */
export function cardinalPoints({ elements, frontGap, length }: Rig): CardinalPoints | null {
  const [A, , C, D] = rigMatrix({ elements, frontGap });
  if (Math.abs(C * length) < 1e-12) return null;
  const frontPrincipalDepth = (A - 1) / C;
  const imageDistance = (D - 1) / C;
  return {
    focalLength: -1 / C,
    frontPrincipalDepth,
    principalSeparation: length - frontPrincipalDepth - imageDistance,
    imageDistance,
  };
}

/** [A, B, C, D] of a rig from the sensor to its foremost surface, slopes counted towards the subject. */
export function rigMatrix({
  elements,
  frontGap,
}: Pick<Rig, 'elements' | 'frontGap'>): readonly [number, number, number, number] {
  let [A, B, C, D] = [1, 0, 0, 1];
  for (const { gap, power } of elements) {
    A += gap * C;
    B += gap * D;
    C -= power * A;
    D -= power * B;
  }
  return [A + frontGap * C, B + frontGap * D, C, D];
}
