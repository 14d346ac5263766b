import type { Rig } from './rig.ts';

/** Cardinal points on the axis, mm from the sensor towards the subject. */
export interface PrincipalPoints {
  /** H'. */
  readonly rearPrincipal: number;
  /** H. */
  readonly frontPrincipal: number;
  /** F', a focal length from H' on the side of the sensor, for a lens that gathers light. */
  readonly rearFocus: number;
  /** F. */
  readonly frontFocus: number;
  /** *f*, negative for what spreads light. */
  readonly focalLength: number;
}

/** An opening as it is seen from one side: where it stands, mm from the sensor, and how wide it looks. */
export interface PlacedPupil {
  readonly at: number;
  readonly diameter: number;
}

/** One lens, converter, close-up lens or objective of a chain, each by itself. */
export interface ElementPoints {
  /** Place of its part in the chain. */
  readonly part: number;
  /** Null for flat glass, which has none. */
  readonly points: PrincipalPoints | null;
  /** Its own stop seen from its own front; null where it has none, or sees it at infinity. */
  readonly entrancePupil: PlacedPupil | null;
  /** The same from its own back. */
  readonly exitPupil: PlacedPupil | null;
}

/**
 * H, H', F, F' and both pupils of everything in the chain that bends or limits light.
 *
 * F' stands f behind H', F f before H; an exit pupil d behind H' is seen from the front at d/(d/f − 1) before H, 1/|1 − d/f| as wide
 */
export function elementPoints({ elements }: Rig): ElementPoints[] {
  let frontBefore = 0;
  return elements.map(({ gap, power, separation, exitRadius, exitDepth, part }) => {
    const rearPrincipal = frontBefore + gap;
    const frontPrincipal = rearPrincipal + separation;
    frontBefore = frontPrincipal;
    const focalLength = 1 / power;
    const hasStop = exitRadius < Infinity;
    const seen = 1 - exitDepth * power;
    return {
      part,
      points: Number.isFinite(focalLength)
        ? {
            rearPrincipal,
            frontPrincipal,
            rearFocus: rearPrincipal - focalLength,
            frontFocus: frontPrincipal + focalLength,
            focalLength,
          }
        : null,
      entrancePupil:
        hasStop && Math.abs(seen) > 1e-12
          ? { at: frontPrincipal - exitDepth / seen, diameter: (2 * exitRadius) / Math.abs(seen) }
          : null,
      exitPupil: hasStop ? { at: rearPrincipal - exitDepth, diameter: 2 * exitRadius } : null,
    };
  });
}
