import { OutOfRange, requireFinite } from '#core/quantity/errors.ts';
import { requireCone, type Cone } from '#core/depth/cone.ts';

/** Two frames of a stack, each with the cone that it was taken through. */
export interface TwoFrames {
  readonly first: Cone;
  readonly second: Cone;
  /** From the sharp plane of the first frame away from the lens to that of the second, mm; negative towards it. */
  readonly step: number;
}

/**
 * How many times larger a fixed detail in the sharp plane of one frame is in another, through any chain. Exact.
 *
 * (m₂/m₁) / (1 − Δ/u₂)
 *
 * @param frames see {@link TwoFrames}: on a rail both cones are the same, u/(u − Δ) is left; with a focus ring each has its own
 * @returns a ratio; 1 on a rail through a telecentric chain, below 1 where the pupil lies behind the subject and the camera comes nearer
 * @throws OutOfRange for what lies outside, and for a step that carries the entrance pupil to the detail or past it
 *
 * Assumes a detail on or near the axis and its image measured from middle to middle of its blurs.
 * Source: perspective from the entrance pupil. Derived in [README](README.md#rail).
 *
 * @example scaleBetweenFrames({ first: { magnification: 1, effectiveFNumber: 16, inverseEntrancePupilDistance: 0.01 }, second:
 *   { magnification: 1, effectiveFNumber: 16, inverseEntrancePupilDistance: 0.01 }, step: 20 }) // 1.25
 */
export function scaleBetweenFrames({ first, second, step }: TwoFrames): number {
  const before = requireCone(first);
  const after = requireCone(second);
  const inverse = after.inverseEntrancePupilDistance;
  const nearing = 1 - requireFinite('frame-step', step) * inverse;
  if (!(nearing > 0)) throw new OutOfRange('frame-step', step, 'one that keeps the entrance pupil off the detail');
  return after.magnification / before.magnification / nearing;
}
