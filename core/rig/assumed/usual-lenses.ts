import type { Bracket } from '../internal-focus-brackets.ts';

/** A number that is assumed: what is taken, and between what it lies. */
export interface Assumption extends Bracket {
  readonly usual: number;
}

/** The longest register and glass behind which short lenses are built, mm: those of cameras with a mirror. */
const roomForMirror = 45;

/**
 * *P* of a camera lens of which only the focal length is known.
 *
 * @param focalLength *f*, mm
 * @returns from 0.5, a long lens built short, to 1.3; short lenses, built long so that a mirror has room, up to 60 mm/f, which reaches 5 at most
 *
 * Source: ours, assumed; it holds the published designs in `tests/reference/lens-prescriptions`, see [README](README.md#what-is-assumed).
 */
export function usualPupilMagnification(focalLength: number): Assumption {
  const most = Math.min(5, Math.max(1.3, 60 / focalLength));
  return { least: 0.5, usual: Math.min(most, Math.max(1, roomForMirror / focalLength)), most };
}

/**
 * *HH'* of a camera lens of which only the focal length is known, mm.
 *
 * @param focalLength *f*, mm
 * @returns from a third of f crossed to a fifth apart; short lenses are built long, and their planes are farther apart by what f lacks of 45 mm
 *
 * Source: ours, assumed; it holds the published designs in `tests/reference/lens-prescriptions`, see [README](README.md#what-is-assumed).
 */
export function usualPrincipalSeparation(focalLength: number): Assumption {
  const lack = Math.max(0, roomForMirror - focalLength);
  return { least: -focalLength / 3, usual: 0.8 * lack, most: focalLength / 5 + lack };
}

/**
 * From flange to front rim of a camera lens of which only the focal length is known, mm.
 *
 * @param focalLength *f*, mm
 * @returns from 15 mm, the flattest, to 60 mm more than f
 *
 * Source: ours, assumed: whoever lays a ruler along the lens knows better, see [README](README.md#what-is-assumed).
 */
export function usualBarrelLength(focalLength: number): Assumption {
  return { least: 15, usual: 25 + focalLength / 2, most: 60 + focalLength };
}
