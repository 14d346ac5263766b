import { filmPlaceSeen, sizeSeen } from '#core/light/film-seen.ts';
import { refractionAngle } from '#core/light/refraction-angle.formula.ts';
import { mostReflected } from '#core/light/soap-film-colour.ts';
import { frame } from './gear.ts';

export interface SeenFilm {
  readonly incidenceAngle: number;
  readonly refractiveIndex: number;
  readonly entrancePupilDistance: number;
  readonly fieldWidth: number;
  readonly top: number;
  readonly bottom: number;
}

/** An upright strip of the film in the camera's picture; lengths in mm of the sharp plane, from the middle, to the right. */
export interface Strip {
  readonly x: number;
  readonly width: number;
  readonly half: number;
  /** How light it is beside the lightest strip, share of the light. */
  readonly share: number;
  /** Where the film would be no thickness, and where the colours' table ends, as y of the strip counted downwards from the middle. */
  readonly from: number;
  readonly to: number;
}

const strips = 24;

/**
 * The film in its frame as the camera sees it: in strips, for from each side it is seen under another angle. The light's second way is longer or
 * shorter there by the cosine inside, and so the colours of the middle stand at other heights.
 *
 * @param most thickness at which the table of colours ends, seen as in the middle, mm
 */
export function stripsOf(film: SeenFilm, most: number): Strip[] {
  const half = frame.width / 2;
  const inside = (incidenceAngle: number) => Math.cos(refractionAngle({ ...film, incidenceAngle }));
  const middle = inside(film.incidenceAngle);
  const edge = (along: number) => {
    const size = sizeSeen(film, along);
    return size === undefined ? undefined : along * Math.cos(film.incidenceAngle) * size;
  };
  const [left, right] = [edge(-half) ?? -film.fieldWidth, edge(half) ?? film.fieldWidth];
  const [from, to] = [Math.max(left, -film.fieldWidth / 2), Math.min(right, film.fieldWidth / 2)];
  if (!(to > from)) return [];
  const width = (to - from) / strips;
  // A film as thick at the top as at the bottom has no place of no thickness: a trace of a wedge has one far away.
  const rise = film.bottom - film.top || 1e-4 * film.top;
  const made = Array.from({ length: strips }, (_, index) => {
    const x = from + (index + 0.5) * width;
    const seen = filmPlaceSeen(film, x);
    if (!seen) return undefined;
    const high = (frame.height / 2) * (sizeSeen(film, seen.along) ?? 1);
    const y = (thickness: number) => -high + (2 * high * (thickness - film.top)) / rise;
    return {
      // The side that is turned away is at the camera’s left.
      x: -x - width / 2,
      width,
      half: high,
      share: mostReflected({ ...film, incidenceAngle: seen.incidenceAngle }),
      from: y(0),
      to: y((most * middle) / inside(seen.incidenceAngle)),
    };
  }).filter((strip) => strip !== undefined);
  const lightest = Math.max(...made.map(({ share }) => share));
  return made.map((strip) => ({ ...strip, share: strip.share / lightest })).reverse();
}
