import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { fNumberFromAperture } from '#core/gaussian/f-number-from-aperture.formula.ts';

/** Rows give the f-number and ask for the pupil, or the other way round. */
export function ours(given: { focalLength: number; fNumber: number } | { focalLength: number; entrancePupil: number }) {
  return 'fNumber' in given ? { entrancePupil: entrancePupil(given) } : { fNumber: fNumberFromAperture(given) };
}
