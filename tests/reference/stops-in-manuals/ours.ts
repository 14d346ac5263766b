import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { stoppedDown } from '#core/gaussian/stopped-down.formula.ts';

/** Rows ask how wide an opening is, or how much light is left of what the wider of two lets through. */
export function ours(given: { focalLength: number; fNumber: number } | { maxAperture: number; fNumber: number }) {
  return 'focalLength' in given ? { entrancePupil: entrancePupil(given) } : { lightLeft: 2 ** -stoppedDown(given) };
}
