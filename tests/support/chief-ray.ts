/** A lens as cardinal points and pupils. Nothing here knows a formula of the core but the definitions of both. */
export interface PointLens {
  readonly focalLength: number;
  readonly pupilMagnification: number;
}

/** A point in front of a lens: how far from the axis, and how far in front of H. */
export interface PointInFront {
  readonly across: number;
  readonly ahead: number;
}

/** How far the middle of the entrance pupil lies in front of H: the exit pupil is its image, upright and P times as wide. */
export function pupilAhead({ focalLength, pupilMagnification }: PointLens): number {
  return focalLength * (1 - 1 / pupilMagnification);
}

/**
 * Where the ray from a point through the middle of the pupil meets a sensor *behind* H′: the middle of the point's image, sharp or blurred.
 */
export function imageAcross(lens: PointLens, { across, ahead }: PointInFront, behind: number): number {
  const slope = -across / (ahead - pupilAhead(lens));
  const atH = across + slope * ahead;
  return atH + (slope - atH / lens.focalLength) * behind;
}
