import { quantityOf, type Quantity, type QuantityName } from '#core/quantity/vocabulary.ts';
import { bodies, lenses } from '#site/state/crate.ts';

const body = bodies['body-36'];
const lens = lenses['lens-50'];

/**
 * What stands in the sheet's fields to begin with, base units: the crate's 36 × 24 mm body and its 50 mm lens at half life size, a small
 * subject, its flash and its rail.
 */
const usual: Readonly<Record<string, number>> = {
  'focal-length': lens['focal-length'],
  'f-number': 8,
  'effective-f-number': 12,
  'entrance-pupil': 6.25,
  'entrance-pupil-distance': 150,
  'inverse-entrance-pupil-distance': 1 / 160,
  'pupil-magnification': lens['pupil-magnification'],
  magnification: 0.5,
  'focus-magnification': lens['focus-magnification'],
  extension: 24,
  'subject-distance': 150,
  'image-distance': 75,
  'focus-distance': 221,
  'working-distance': 120,
  'rim-diameter': lens['rim-diameter'],
  'air-gap': 20,
  'pane-thickness': 5,
  'immersion-depth': 40,
  'register-distance': body['register-distance'],
  'principal-separation': lens['principal-separation'],
  'front-principal-depth': lens['front-principal-depth'],
  'close-up-power': 4,
  'close-up-gap': 25,
  'abbe-number': 60,
  'colour-spread': 1,
  'converter-factor': 2,
  'numerical-aperture': 0.1,
  'objective-magnification': 4,
  'tube-focal-length': 200,
  'sensor-width': body['sensor-width'],
  'sensor-height': body['sensor-height'],
  'pixel-pitch': body['pixel-pitch'],
  'field-width': 72,
  'subject-width': 20,
  'subject-depth': 4,
  'image-width': 10,
  'print-width': 300,
  'viewing-distance': 400,
  'circle-of-confusion': body['circle-of-confusion'],
  'depth-of-field': 2,
  'background-distance': 500,
  wavelength: 0.00055,
  'defocus-blur': 0.03,
  'spatial-frequency': 50,
  'cutoff-frequency': 150,
  'light-loss': 1,
  'exposure-time': 1 / 60,
  iso: 100,
  illuminance: 2000,
  luminance: 1000,
  'reflected-light-constant': 12.5,
  'incident-light-constant': 250,
  'guide-number': 14,
  'flash-power': 1 / 16,
  'flash-distance': 200,
  'ambient-underexposure': 3,
  'quantum-efficiency': 0.5,
  electrons: 1000,
  'full-well': 50000,
  'read-noise': 3,
  'shake-rate': 0.01,
  stabilisation: 2,
  'sideways-speed': 5,
  'subject-speed': 20,
  'swing-period': 1,
  'swing-amplitude': 5,
  'keeper-share': 0.25,
  'subject-tilt': Math.PI / 6,
  overlap: 0.25,
  'frame-step': 0.5,
  'frame-count': 9,
  'scale-change': 0.002,
  'settling-time': 1,
  'recycling-time': 2,
  'time-limit': 60,
  'source-size': 60,
  'source-angle': Math.PI / 6,
  'edge-height': 5,
  'ball-radius': 3,
  'catchlight-width-paraxial': 0.4,
  'film-thickness': 0.0001,
  'refractive-index': 1.33,
  'incidence-angle': Math.PI / 6,
  'refraction-angle': Math.PI / 9,
  reflectance: 0.02,
  'interference-order': 1,
};

/** Where two of a kind are not alike, or a formula speaks of other gear. */
const special: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'lighting-difference': { 'main-light.illuminance': 4000, 'fill-light.illuminance': 1000 },
  'working-distance-into-tank': { 'pane.refractive-index': 1.5, 'medium.refractive-index': 1.33 },
  'magnification-of-coupled-lenses': { 'main-lens.focal-length': 90, 'reversed-lens.focal-length': 28 },
  'working-distance-of-reversed-lens': { 'reversed-lens.register-distance': 44, 'focal-length': 28, magnification: 2 },
  'working-distance-of-racked-out-reversed-lens': {
    'reversed-lens.register-distance': 44,
    'focus-travel': 2.8,
    'focal-length': 28,
    magnification: 2,
    'rear-protrusion': 11,
  },
  'magnification-of-reversed-lens': { 'focal-length': 28, 'front-principal-depth': 34, extension: 12 },
  'extension-for-reversed-lens': { 'focal-length': 28, 'front-principal-depth': 34, magnification: 3 },
  'effective-f-number-of-reversed-lens': { magnification: 2, 'pupil-magnification': 1.5 },
  'entrance-pupil-distance-of-reversed-lens': { 'focal-length': 28, magnification: 2, 'pupil-magnification': 1.5 },
  'entrance-pupil-of-reversed-lens': { 'focal-length': 28, 'pupil-magnification': 1.5 },
  'working-distance-with-close-up-lens': { magnification: 0.365 },
  'colour-spread-of-close-up-lens': { 'working-distance': 250 },
  'magnification-of-infinity-objective': { 'focal-length': 200 },
  'effective-f-number-of-objective': { magnification: 4 },
  'light-loss': { 'effective-f-number': 16 },
  'subject-depth-of-tilt': { 'subject-width': 20 },
};

/** The number with which a field of the formula called *id* begins, base unit; what the table does not know begins in the middle of its range. */
export function startOf(id: string, name: QuantityName): number {
  return special[id]?.[name] ?? usual[name.slice(name.lastIndexOf('.') + 1)] ?? middleOf(quantityOf(name));
}

function middleOf({ least, most }: Quantity): number {
  return least > 0 ? Math.sqrt(least * most) : (least + most) / 2;
}
