import { defocusBlurOfCone } from '#core/depth/blur-of-cone.ts';
import type { Cone } from '#core/depth/cone.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * How wide an edge is smeared over the background behind it, focus on the background, through any chain. Exact.
 *
 * band = (m/N_w) y / (1 − y/u)
 *
 * @param given *m*, *N_w* and *1/u* as in {@link Cone}, the chain focused on the background
 * @param given.edgeHeight *y*, of the edge above the background, mm; above 0
 * @returns mm on the background; see `hiddenBand`, which it is for a pupil in front
 * @throws OutOfRange for what lies outside, and for an edge at an entrance pupil in front of it or behind that
 *
 * Source: the blur of the edge, counted on the background. Derived in [README](README.md#hidden-band).
 *
 * @example hiddenBandOfCone({ magnification: 1, effectiveFNumber: 10.5, inverseEntrancePupilDistance: 0, edgeHeight: 5.25 }) // 0.5
 */
export function hiddenBandOfCone({ edgeHeight, ...cone }: Cone & Readonly<Named<'edge-height'>>): number {
  const offset = -requirePositive('edge-height', edgeHeight);
  return defocusBlurOfCone({ ...cone, offset }) / cone.magnification;
}
