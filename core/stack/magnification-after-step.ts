import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';

/** A lens that moves as a whole, before a step of its sharp plane. */
export interface BeforeStep {
  /** *f*, mm, above 0 */
  readonly focalLength: number;
  /** *m*, in the sharp plane, above 0; at life size the lens is racked in, towards smaller *m* */
  readonly magnification: number;
  /** Of the sharp plane, away from the sensor, mm; negative towards it, no nearer than life size */
  readonly step: number;
}

/**
 * The magnification once a lens, moved as a whole before a camera that stands still, has carried its sharp plane on by a step.
 *
 * m + 1/m grows by step/f
 *
 * @param lens see {@link BeforeStep}
 * @returns *m*, on the same side of life size as before
 * @throws OutOfRange for what lies outside, and for a step that would have to pass through life size, named with the step
 *   that would just reach it: there the plane lies at L = 4f + HH′, and no nearer one can be had
 *
 * Source: L = f (2 + m + 1/m) + HH′. Derived in [README](README.md#focusing-by-the-ring).
 *
 * @example magnificationAfterStep({ focalLength: 100, magnification: 1, step: 50 }) // 0.5
 */
export function magnificationAfterStep({ focalLength, magnification, step }: BeforeStep): number {
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  // m + 1/m − 2, which stays exact near life size.
  const beyondLifeSize =
    (1 - magnification) * (1 / magnification - 1) + requireFinite('frame-step', step) / focalLength;
  if (!(beyondLifeSize >= 0)) {
    throw new OutOfRange('frame-step', step, 'one that stays on its side of life size, where L = 4f + HH′ is nearest');
  }
  const smaller = 2 / (2 + beyondLifeSize + Math.sqrt(beyondLifeSize * (beyondLifeSize + 4)));
  return magnification > 1 ? 1 / smaller : smaller;
}
