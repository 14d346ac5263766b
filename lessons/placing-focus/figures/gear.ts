import { degree } from '#core/quantity/units.ts';

/** What of a lens places the focus. */
export const ofLens = ['focal-length', 'pupil-magnification'] as const;

/** Flat things, or two eyes, that lean away from the camera: along the lean. Assumed, as such things are found. */
export const leaning = {
  eyes: { label: 'hoverfly’s eyes, 1.5 mm apart', magnification: 2, 'subject-width': 1.5, 'subject-tilt': 20 * degree },
  wing: { label: 'butterfly’s wing, 25 mm', magnification: 0.5, 'subject-width': 25, 'subject-tilt': 12 * degree },
  leaf: { label: 'leaf, 60 mm', magnification: 0.25, 'subject-width': 60, 'subject-tilt': 30 * degree },
} as const;
