import type { Pupil } from '#core/wave/pupil.ts';

/** Pupils that two routes must agree on: either aberration alone, both together, at best focus and off it. */
export const pupilsToCompare: readonly Pupil[] = [
  { defocusAberration: 0.5, sphericalAberration: 0 },
  { defocusAberration: 3, sphericalAberration: 0 },
  { defocusAberration: 0, sphericalAberration: 1 },
  { defocusAberration: -1, sphericalAberration: 1 },
  { defocusAberration: 2, sphericalAberration: 1.5 },
  { defocusAberration: -6, sphericalAberration: 4 },
];

export const nameOfPupils = 'with $defocusAberration waves of defocus and $sphericalAberration of spherical aberration';

/** W, in wavelengths, as it is written in books. */
export function pathDifference({ defocusAberration, sphericalAberration }: Pupil, squareOfRadius: number): number {
  return defocusAberration * squareOfRadius + sphericalAberration * squareOfRadius ** 2;
}
