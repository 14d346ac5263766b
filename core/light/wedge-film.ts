import { OutOfRange, requireNotNegative } from '#core/quantity/errors.ts';

/** A film that has drained into a wedge. */
export interface WedgeFilm {
  /** mm, 0 or above. */
  readonly thicknessAtTop: number;
  /** mm, 0 or above. */
  readonly thicknessAtBottom: number;
  /** How far down, as a share of its height, 0 to 1. */
  readonly down: number;
}

/**
 * The thickness of an upright soap film that has drained into a simple wedge.
 *
 * d_f = top + (bottom − top) × share
 *
 * @param film see {@link WedgeFilm}
 * @returns *d_f*, mm; the bands of one wavelength come out evenly spaced
 * @throws OutOfRange for a negative or endless thickness and for a place outside the film
 *
 * Assumes the wedge and does not derive it: a real film is thicker towards the bottom in a curve, flows about, and has black patches
 * with a step at their edge.
 * Source: OpenStax, University Physics Vol. 3, section 3.4, example 3.6 (a smooth wedge). See [README](README.md#a-draining-film).
 *
 * @example wedgeFilmThickness({ thicknessAtTop: 0, thicknessAtBottom: 0.001, down: 0.5 }) // 0.0005
 */
export function wedgeFilmThickness({ thicknessAtTop, thicknessAtBottom, down }: WedgeFilm): number {
  requireNotNegative('film-thickness', thicknessAtTop);
  requireNotNegative('film-thickness', thicknessAtBottom);
  if (!(down >= 0 && down <= 1))
    throw new OutOfRange('film-thickness', down, 'a place within the film, 0 to 1 of its height');
  return thicknessAtTop + (thicknessAtBottom - thicknessAtTop) * down;
}
