/**
 * A lens as cardinal points and pupils, and one ray through it: the slow route to what the core has in closed form.
 *
 * Nothing here knows a formula of the core but the definitions: what H and H′ are, and that the pupils are images of each other.
 */
export interface TracedLens {
  readonly focalLength: number;
  readonly pupilMagnification: number;
  readonly entrancePupil: number;
  /** From H to the sharp plane. */
  readonly subjectDistance: number;
}

export interface TracedRay {
  /** Slope with which the ray leaves the point on the axis. */
  readonly slopeBefore: number;
  /** Slope with which it arrives at the sensor. */
  readonly slopeAfter: number;
  /** Where it arrives, above the axis. */
  readonly heightAtSensor: number;
}

/**
 * The ray from a point on the axis, *offset* behind the sharp plane (negative: in front of it), through the rim of the pupil.
 */
export function rimRay(lens: TracedLens, offset = 0): TracedRay {
  const { focalLength, pupilMagnification, entrancePupil, subjectDistance } = lens;
  const toH = subjectDistance + offset;
  // The exit pupil is the entrance pupil's image, upright and P times as wide; it has such an image from f (1 − 1/P) in front of H.
  const pupilInFrontOfH = focalLength * (1 - 1 / pupilMagnification);
  const slopeBefore = entrancePupil / 2 / (toH - pupilInFrontOfH);
  const heightAtH = slopeBefore * toH;
  const slopeAfter = slopeBefore - heightAtH / focalLength;
  const toSensor = 1 / (1 / focalLength - 1 / subjectDistance);
  return { slopeBefore, slopeAfter, heightAtSensor: heightAtH + slopeAfter * toSensor };
}
