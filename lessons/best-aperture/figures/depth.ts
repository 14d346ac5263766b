import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import type { Named } from '#core/quantity/formula.ts';
import { fNumberSeries } from '#core/quantity/nominal.ts';
import type { DepthAtFrequency } from '#core/wave/best-f-number.ts';

/** What decides how much a deep subject keeps at a mark. */
export const ofSubject = [
  'subject-depth',
  'magnification',
  'pupil-magnification',
  'max-aperture',
  'spherical-aberration',
  'spatial-frequency',
  'wavelength',
] as const;

export type DeepSubjectSeen = Readonly<Named<(typeof ofSubject)[number]>>;

/** Of the marks that are tried. */
export const smallestMark = 32;

/** The marks of a lens as they are printed on it, in thirds of a stop, from its widest to f/32. */
export function marksFrom(maxAperture: number): readonly number[] {
  return [maxAperture, ...fNumberSeries.filter((mark) => mark > maxAperture && mark <= smallestMark)];
}

/** The marks two stops either side of *fNumber*, and a stop. */
export function markBeside(fNumber: number, stops: number): number {
  const wanted = fNumber * 2 ** (stops / 2);
  const off = (mark: number) => Math.abs(Math.log(mark / wanted));
  return fNumberSeries.reduce((nearest, mark) => (off(mark) < off(nearest) ? mark : nearest));
}

/** The subject in focus in its middle, both sides alike: close up, as the formulas of this lesson have it. */
export function depthOf(given: DeepSubjectSeen): DepthAtFrequency & { readonly planeDepth: number } {
  const { magnification, pupilMagnification } = given;
  return {
    subjectDepth: given.subjectDepth,
    wavelength: given.wavelength,
    spatialFrequency: given.spatialFrequency,
    planeDepth: given.subjectDepth / 2,
    wideOpen: given,
    coneAt: (fNumber) => ({
      magnification,
      effectiveFNumber: effectiveFNumber({ fNumber, magnification, pupilMagnification }),
      inverseEntrancePupilDistance: 0,
    }),
  };
}
