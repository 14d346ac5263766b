import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'frame-step' | 'magnification' | 'pupil-magnification' | 'focal-length';

/**
 * By how much a fixed detail changes its size on the sensor when the lens as a whole is racked out or in by one step, the camera standing still.
 *
 * scale change = dm/(P + m) + travel/u = Δ m² (1 + m P) / (f |1 − m²| (P + m))
 *
 * @param given.frameStep *Δ*, of the sharp plane, mm; above 0
 * @param given.magnification *m*, in the sharp plane; above 0 and not 1
 * @param given.pupilMagnification *P*, the lens as it stands; above 0
 * @param given.focalLength *f*, mm; above 0
 * @returns a share, of first order in the step: growth where the lens is racked out. `scaleBetweenFocusSettings` is exact.
 * @throws OutOfRange for anything not finite and above zero, for life size, where the sharp plane does not move at all, and for a
 *   step that would carry the lens through it
 *
 * Assumes a lens that moves as a whole, Δ = f |1 − 1/m²| dm, and a detail in the sharp plane. Lenses that focus inside behave otherwise.
 * Source: the chief ray’s two slopes. Derived in [README](README.md#focusing-by-the-ring).
 *
 * @example scaleChangeFocusing({ frameStep: 0.3, magnification: 0.5, pupilMagnification: 1, focalLength: 100 }) // 0.001
 */
export function scaleChangeFocusing({
  frameStep,
  magnification,
  pupilMagnification,
  focalLength,
}: Named<Inputs>): number {
  requirePositive('frame-step', frameStep);
  requirePositive('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  requirePositive('focal-length', focalLength);
  const toLifeSize = focalLength * (1 - magnification) * (1 / magnification - 1);
  if (!(toLifeSize > 0))
    throw new OutOfRange('magnification', magnification, 'not life size, where focusing moves nothing');
  if (frameStep > toLifeSize) throw new OutOfRange('frame-step', frameStep, 'one that does not pass through life size');
  return (
    (frameStep * magnification ** 2 * (1 + magnification * pupilMagnification)) /
    (focalLength * Math.abs(1 - magnification ** 2) * (pupilMagnification + magnification))
  );
}

export const scaleChangeFocusingFormula = {
  gives: 'scale-change',
  from: ['frame-step', 'magnification', 'pupil-magnification', 'focal-length'],
  tex: String.raw`\q{scale-change} = \frac{\q{frame-step}\,\q{magnification}^2\left(1 + \q{magnification}\,\q{pupil-magnification}\right)}{\q{focal-length}\left|1 - \q{magnification}^2\right|\left(\q{pupil-magnification} + \q{magnification}\right)}`,
  evaluate: scaleChangeFocusing,
  says: 'Near life size the lens travels far for a small step, and the picture grows or shrinks with it.',
  source: 'derived in core/stack/README.md#focusing-by-the-ring',
  checkedBy: ['pupils-in-matrices'],
  // Longer steps, or a beginning nearer life size, would carry the lens through it.
  sample: { 'frame-step': [1e-5, 0.1], magnification: [0.02, 0.9] },
} as const satisfies Formula<Inputs>;
