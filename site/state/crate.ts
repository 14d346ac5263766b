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

/** Lenses at their closest focus. The macro lens focuses internally: at life size its focal length is (290 mm − 0)/4. */
export const lenses = {
  'lens-50': {
    label: '50 mm f/1.8',
    'focal-length': 50,
    'focus-magnification': 0.15,
    'f-number': 8,
    'pupil-magnification': 1.1,
    'front-principal-depth': 22,
    'principal-separation': -4,
  },
  'lens-28': {
    label: '28 mm f/2.8, manual',
    'focal-length': 28,
    'focus-magnification': 0.1,
    'f-number': 8,
    'pupil-magnification': 1.5,
    'front-principal-depth': 34,
    'principal-separation': 12,
  },
  'lens-18': {
    label: '18-55 mm zoom at 18 mm',
    'focal-length': 18,
    'focus-magnification': 0.06,
    'f-number': 8,
    'pupil-magnification': 2.1,
    'front-principal-depth': 62,
    'principal-separation': 20,
  },
  'lens-55': {
    label: '18-55 mm zoom at 55 mm',
    'focal-length': 55,
    'focus-magnification': 0.3,
    'f-number': 8,
    'pupil-magnification': 1.2,
    'front-principal-depth': 48,
    'principal-separation': 2,
  },
  'lens-90': {
    label: '90 mm f/2.8 macro, at life size',
    'focal-length': 72.5,
    'focus-magnification': 1,
    'f-number': 8,
    'pupil-magnification': 0.85,
    'front-principal-depth': 24,
    'principal-separation': 0,
  },
} as const;

/** Lengths of the three extension rings. */
export const rings = [12, 24, 36] as const;

/** Powers of the two close-up lenses, dpt. */
export const closeUpPowers = [2, 4] as const;
