import { circleOfConfusionByWidth } from '#core/depth/circle-of-confusion-by-width.formula.ts';

/**
 * The Saltmarsh Camera Club's lending crate: invented gear with the sizes such gear has. Every lesson's numbers start here.
 * Lengths in mm.
 */
/*
 * A body's circle of confusion is the same in all lessons until the reader chooses another: 1/1800 of the sensor's width, one arcminute in
 * a picture that is seen as an A5 page is read. It asks for nothing but the body.
 */
export const bodies = {
  'body-36': {
    label: '36 × 24 mm body, 24 megapixels',
    'sensor-width': 36,
    'sensor-height': 24,
    'pixel-pitch': 36 / 6000,
    'register-distance': 44,
    'circle-of-confusion': circleOfConfusionByWidth({ sensorWidth: 36 }),
  },
  'body-23': {
    label: '23.5 × 15.6 mm body, 24 megapixels',
    'sensor-width': 23.5,
    'sensor-height': 15.6,
    'pixel-pitch': 23.5 / 6000,
    'register-distance': 44,
    'circle-of-confusion': circleOfConfusionByWidth({ sensorWidth: 23.5 }),
  },
} as const;

/**
 * Lenses at their closest focus, as benches start with them. `max-aperture`, `rim-diameter` and `register-distance` are those of the lens; what else is printed
 * on one stands in `lens-marks.ts`.
 *
 * The macro lenses and the 200 mm lens focus inside and are shorter here than engraved: (290 mm − 0)/4 at life size, (900 mm − 25)/6.25 at a quarter of it, traced through
 * the glass for the 60 mm lens.
 */
export const lenses = {
  'lens-50': {
    label: '50 mm f/1.8',
    'focal-length': 50,
    'focus-magnification': 0.15,
    'f-number': 8,
    'pupil-magnification': 1.1,
    'front-principal-depth': 22,
    'principal-separation': -4,
    'max-aperture': 1.8,
    'rim-diameter': 53,
  },
  'lens-28': {
    label: '28 mm f/2.8, manual',
    'focal-length': 28,
    'focus-magnification': 0.1,
    'f-number': 8,
    'pupil-magnification': 1.535,
    'front-principal-depth': 34,
    'principal-separation': 16.47,
    'max-aperture': 2.8,
    'rim-diameter': 56,
  },
  'lens-18': {
    label: '18-55 mm zoom at 18 mm',
    'focal-length': 18,
    'focus-magnification': 0.06,
    'f-number': 8,
    'pupil-magnification': 2.1,
    'front-principal-depth': 62,
    'principal-separation': 20,
    'max-aperture': 3.5,
    'rim-diameter': 56,
  },
  'lens-55': {
    label: '18-55 mm zoom at 55 mm',
    'focal-length': 55,
    'focus-magnification': 0.3,
    'f-number': 8,
    'pupil-magnification': 1.2,
    'front-principal-depth': 48,
    'principal-separation': 2,
    'max-aperture': 5.6,
    'rim-diameter': 56,
  },
  'lens-60': {
    label: '60 mm f/2.8 macro, at life size',
    'focal-length': 49.43,
    'focus-magnification': 1,
    'f-number': 8,
    'pupil-magnification': 0.808,
    'front-principal-depth': 8.42,
    'principal-separation': 21.17,
    'max-aperture': 2.8,
    'rim-diameter': 58,
  },
  'lens-90': {
    label: '90 mm f/2.8 macro, at life size',
    'focal-length': 72.5,
    'focus-magnification': 1,
    'f-number': 8,
    'pupil-magnification': 0.85,
    'front-principal-depth': 24,
    'principal-separation': 0,
    'max-aperture': 2.8,
    'rim-diameter': 64,
  },
  'lens-100': {
    label: '100 mm f/4, manual',
    'focal-length': 100,
    'focus-magnification': 0.1,
    'f-number': 8,
    'pupil-magnification': 0.945,
    'front-principal-depth': 18,
    'principal-separation': 1.25,
    'max-aperture': 4,
    'rim-diameter': 53,
  },
  'lens-200': {
    label: '200 mm f/4',
    'focal-length': 140,
    'focus-magnification': 0.25,
    'f-number': 8,
    'pupil-magnification': 0.6,
    'front-principal-depth': -30,
    'principal-separation': 25,
    'max-aperture': 4,
    'rim-diameter': 68,
  },
} as const;

/** Slug of one of the crate's lenses. */
export type LensSlug = keyof typeof lenses;

/** A lens as it is engraved: close up some of them are called by what they are there. */
export const nameOf = (slug: LensSlug) => lenses[slug].label.replace(', at life size', '');

/** Lengths of the three extension rings. */
export const rings = [12, 24, 36] as const;
