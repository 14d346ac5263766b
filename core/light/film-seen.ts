import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/** A flat film that the camera's axis meets in the sharp plane, turned about an upright line. */
export type TurnedFilm = Named<'entrance-pupil-distance' | 'incidence-angle'>;

/** A place of a film as a camera sees it. */
export interface SeenPlace {
  /** From the axis along the film, mm; above zero at the side that is turned away. */
  readonly along: number;
  /** Behind the sharp plane, mm; below zero in front of it. */
  readonly depth: number;
  /** *θ* there, outside, from the film's normal, rad. */
  readonly incidenceAngle: number;
}

/**
 * The place of a turned film that the middle of the entrance pupil sees through a point of the sharp plane.
 *
 * s = x u/(u cos θ − x sin θ), there tan θ = |u sin θ + s|/(u cos θ)
 *
 * @param film *u*, mm, above 0; *θ*, rad, 0 to π/2, where the axis meets it
 * @param across *x*, from the axis, mm, above zero at the side where the film is turned away
 * @returns undefined where the ray runs past the film, however far that reaches
 * @throws OutOfRange for anything outside those ranges
 *
 * Source: intersection of two lines. See [README](README.md#a-flat-mirror).
 *
 * @example filmPlaceSeen({ entrancePupilDistance: 200, incidenceAngle: 0 }, 10) // { along: 10, depth: 0, incidenceAngle: 0.04995... }
 */
export function filmPlaceSeen(film: TurnedFilm, across: number): SeenPlace | undefined {
  const { entrancePupilDistance: ahead, sine, cosine } = turned(film);
  requireFinite('field-width', across);
  const nearing = ahead * cosine - across * sine;
  if (nearing <= 0) return undefined;
  const along = (across * ahead) / nearing;
  return {
    along,
    depth: along * sine,
    incidenceAngle: Math.atan2(Math.abs(ahead * sine + along), ahead * cosine),
  };
}

/**
 * How large a camera sees a place of a turned film: a length there over what it covers in the sharp plane is 1 over this.
 *
 * u/(u + s sin θ)
 *
 * @param film as for {@link filmPlaceSeen}
 * @param along *s*, mm
 * @returns above 0; undefined for a place beside the pupil or behind it
 * @throws OutOfRange as {@link filmPlaceSeen} does
 *
 * @example sizeSeen({ entrancePupilDistance: 100, incidenceAngle: Math.PI / 2 }, 100) // 0.5
 */
export function sizeSeen(film: TurnedFilm, along: number): number | undefined {
  const { entrancePupilDistance: ahead, sine } = turned(film);
  requireFinite('field-width', along);
  const away = ahead + along * sine;
  return away > 0 ? ahead / away : undefined;
}

function turned({ entrancePupilDistance, incidenceAngle }: TurnedFilm) {
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  if (!(incidenceAngle >= 0 && incidenceAngle <= Math.PI / 2))
    throw new OutOfRange('incidence-angle', incidenceAngle, 'from 0 to π/2');
  return { entrancePupilDistance, sine: Math.sin(incidenceAngle), cosine: Math.cos(incidenceAngle) };
}
