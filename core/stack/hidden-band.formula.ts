import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'entrance-pupil' | 'edge-height' | 'entrance-pupil-distance';

/**
 * How wide an edge is smeared over the background behind it, focus on the background. Exact.
 *
 * band = D y / (u − y)
 *
 * @param given.entrancePupil *D*, diameter, mm; above 0
 * @param given.edgeHeight *y*, of the edge above the background in focus, mm; above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to the background, mm; above 0
 * @returns mm on the background. Half of it lies outside the edge and is partly blocked: the background shines through it, but
 *   no frame shows it clean. Behind the object nothing is recovered by any frame.
 * @throws OutOfRange for anything not finite and above zero, and for an edge at the entrance pupil or behind it
 *
 * Assumes a straight edge and geometrical optics.
 * Source: similar triangles through the edge. Derived in [README](README.md#hidden-band).
 *
 * @example hiddenBand({ entrancePupil: 10, edgeHeight: 5, entrancePupilDistance: 105 }) // 0.5
 */
export function hiddenBand({ entrancePupil, edgeHeight, entrancePupilDistance }: Named<Inputs>): number {
  requirePositive('entrance-pupil', entrancePupil);
  requirePositive('edge-height', edgeHeight);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  if (!(edgeHeight < entrancePupilDistance))
    throw new OutOfRange('edge-height', edgeHeight, 'short of the entrance pupil');
  return (entrancePupil * edgeHeight) / (entrancePupilDistance - edgeHeight);
}

export const hiddenBandFormula = {
  gives: 'hidden-band',
  from: ['entrance-pupil', 'edge-height', 'entrance-pupil-distance'],
  tex: String.raw`\q{hidden-band} = \frac{\q{entrance-pupil}\,\q{edge-height}}{\q{entrance-pupil-distance} - \q{edge-height}}`,
  evaluate: hiddenBand,
  says: 'The wider the pupil and the higher the edge, the wider the strip of background that only part of the lens can see.',
  source: 'derived in core/stack/README.md#hidden-band',
  checkedBy: ['shadows-and-views'],
  // A higher edge would stand behind the pupil.
  sample: { 'edge-height': [0.001, 100], 'entrance-pupil-distance': [110, 50000] },
} as const satisfies Formula<Inputs>;
