import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'frame-step' | 'entrance-pupil-distance';

/**
 * By how much a fixed detail grows on the sensor when a camera steps towards it on a rail. Exact.
 *
 * scale change = u/(u − Δ) − 1 = Δ/(u − Δ)
 *
 * @param given.frameStep *Δ*, mm; above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to the detail before the step, mm; above 0
 * @returns a share: 0.01 makes what was 100 pixels long 101. The sharp plane itself keeps its scale: it is another plane each time.
 * @throws OutOfRange for anything not finite and above zero, and for a step that carries the pupil to the detail or past it
 *
 * Assumes a rail along the axis, and the blurred image’s scale taken from middle to middle of its blurs.
 * Source: perspective from the entrance pupil. Derived in [README](README.md#rail).
 *
 * @example scaleChangeOnRail({ frameStep: 0.5, entrancePupilDistance: 100.5 }) // 0.005
 */
export function scaleChangeOnRail({ frameStep, entrancePupilDistance }: Named<Inputs>): number {
  requirePositive('frame-step', frameStep);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  if (!(frameStep < entrancePupilDistance))
    throw new OutOfRange('frame-step', frameStep, 'short of the distance to the detail');
  return frameStep / (entrancePupilDistance - frameStep);
}

export const scaleChangeOnRailFormula = {
  gives: 'scale-change',
  from: ['frame-step', 'entrance-pupil-distance'],
  tex: String.raw`\q{scale-change} = \frac{\q{frame-step}}{\q{entrance-pupil-distance} - \q{frame-step}}`,
  evaluate: scaleChangeOnRail,
  says: 'The camera comes nearer, so everything grows: the nearer it stands, the more.',
  source: 'derived in core/stack/README.md#rail',
  checkedBy: ['pupils-in-matrices'],
  // A longer step would carry the pupil past the detail.
  sample: { 'frame-step': [1e-5, 100], 'entrance-pupil-distance': [110, 50000] },
} as const satisfies Formula<Inputs>;
