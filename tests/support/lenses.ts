import type fc from 'fast-check';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { quantities } from './sample.ts';

/** A lens at work, and what the depth functions want to know of it. */
export interface LensAtWork {
  readonly focalLength: number;
  readonly fNumber: number;
  readonly magnification: number;
  readonly pupilMagnification: number;
  readonly circleOfConfusion: number;
  readonly entrancePupil: number;
  readonly entrancePupilDistance: number;
}

type Chosen = Pick<
  LensAtWork,
  'focalLength' | 'fNumber' | 'magnification' | 'pupilMagnification' | 'circleOfConfusion'
>;

/** A lens with its entrance pupil worked out. */
export function lensAtWork(chosen: Chosen): LensAtWork {
  return { ...chosen, entrancePupil: entrancePupil(chosen), entrancePupilDistance: entrancePupilDistance(chosen) };
}

/** Lenses from all over the domain: f 4 to 800 mm, f/0.95 to f/64, m 0.02 to 20, P 0.2 to 5, c 1 to 200 µm. */
export const lenses: fc.Arbitrary<LensAtWork> = quantities([
  'focal-length',
  'f-number',
  'magnification',
  'pupil-magnification',
  'circle-of-confusion',
]).map((drawn) =>
  lensAtWork({
    focalLength: drawn['focal-length']!,
    fNumber: drawn['f-number']!,
    magnification: drawn.magnification!,
    pupilMagnification: drawn['pupil-magnification']!,
    circleOfConfusion: drawn['circle-of-confusion']!,
  }),
);

/** Focused so near the hyperfocal distance that rounding decides whether the far limit is infinite: no route can be held to another. */
export function atHyperfocal({ circleOfConfusion, magnification, entrancePupil: diameter }: LensAtWork): boolean {
  return Math.abs((magnification * diameter) / circleOfConfusion - 1) < 1e-6;
}
