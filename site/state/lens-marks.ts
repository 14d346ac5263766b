import type { Focusing, Lens } from '#core/rig/lens.ts';
import type { LensSlug } from './crate.ts';

/**
 * A lens of the crate as it lies in the hand: what is printed on it, and what is not printed but measured. Lengths in mm.
 *
 * Distances are as marked, rounded; the rest is that of the infinity setting.
 */
export interface Marks {
  readonly 'focal-length': number;
  /** Widest and smallest hole, as f-numbers. */
  readonly 'max-aperture': number;
  readonly smallestAperture: number;
  /** *L*, sensor to subject, and *m₀* at the end of the focus ring. */
  readonly closest: { readonly 'focus-distance': number; readonly 'focus-magnification': number };
  readonly thread: number;
  readonly 'rim-diameter': number;
  readonly 'pupil-magnification': number;
  readonly 'front-principal-depth': number;
  readonly 'principal-separation': number;
  /** Moved as a whole, or groups inside; what is then assumed to stay. */
  readonly focusing: 'whole' | 'inside';
  readonly iris: Lens['apertureControl'];
}

/** The register of the crate's mount, flange to sensor, mm. */
export const crateRegister = 44;

/** The lenses of the crate, set to infinity. The zoom is two lenses, one at each end. */
export const marks: Readonly<Record<LensSlug, Marks>> = {
  'lens-50': marked([50, 1.8, 16], [440, 0.15, 'whole'], [1.1, 22, -4], [49, 53, 'camera']),
  'lens-28': marked([28, 2.8, 22], [355, 0.1, 'whole'], [1.535, 34, 16.47], [52, 56, 'lens']),
  'lens-18': marked([18, 3.5, 22], [357, 0.06, 'whole'], [2.1, 62, 20], [52, 56, 'camera']),
  'lens-55': marked([55, 5.6, 32], [312, 0.3, 'whole'], [1.2, 48, 2], [52, 56, 'camera']),
  'lens-60': marked([60, 2.8, 32], [219, 1, 'inside'], [0.963, 9.15, 6.52], [52, 58, 'camera']),
  'lens-90': marked([90, 2.8, 32], [290, 1, 'inside'], [0.85, 79, 0], [58, 64, 'camera']),
  'lens-100': marked([100, 4, 32], [1210, 0.1, 'whole'], [0.945, 18, 1.25], [49, 53, 'lens']),
  'lens-200': marked([200, 4, 32], [900, 0.25, 'inside'], [0.6, -55, 25], [62, 68, 'camera']),
};

function marked(
  [focalLength, maxAperture, smallestAperture]: readonly [number, number, number],
  [focusDistance, focusMagnification, focusing]: readonly [number, number, Marks['focusing']],
  [pupilMagnification, frontPrincipalDepth, principalSeparation]: readonly [number, number, number],
  [thread, rimDiameter, iris]: readonly [number, number, Marks['iris']],
): Marks {
  return {
    'focal-length': focalLength,
    'max-aperture': maxAperture,
    smallestAperture,
    closest: { 'focus-distance': focusDistance, 'focus-magnification': focusMagnification },
    thread,
    'rim-diameter': rimDiameter,
    'pupil-magnification': pupilMagnification,
    'front-principal-depth': frontPrincipalDepth,
    'principal-separation': principalSeparation,
    focusing,
    iris,
  };
}

/** The 60 mm lens traced through its glass at five settings; between them matrices run evenly. */
const states60: Extract<Focusing, { by: 'states' }> = {
  by: 'states',
  states: [
    traced60(0, 60, 6.518, 9.149, 0.9634, 1),
    traced60(0.25, 56.954, 8.467, 8.531, 0.9196, 0.9348),
    traced60(0.5, 54.201, 11.62, 8.216, 0.8793, 0.8758),
    traced60(0.75, 51.703, 15.88, 8.182, 0.8421, 0.8223),
    traced60(1, 49.427, 21.17, 8.416, 0.8078, 0.7736),
  ],
};

function traced60(
  focusMagnification: number,
  focalLength: number,
  principalSeparation: number,
  frontPrincipalDepth: number,
  pupilMagnification: number,
  fNumberDrift: number,
) {
  return {
    focusMagnification,
    focalLength,
    principalSeparation,
    frontPrincipalDepth,
    pupilMagnification,
    fNumberDrift,
  };
}

/** A lens of the crate for the rig engine, drawn by its outline. Those whose glass is known stand in `glass.ts`. */
export function crateLens(slug: LensSlug): Lens {
  const lens = marks[slug];
  const { 'focus-distance': closestFocusDistance, 'focus-magnification': closestMagnification } = lens.closest;
  return {
    focalLength: lens['focal-length'],
    principalSeparation: lens['principal-separation'],
    frontPrincipalDepth: lens['front-principal-depth'],
    pupilMagnification: lens['pupil-magnification'],
    registerDistance: crateRegister,
    apertureControl: lens.iris,
    focusing:
      slug === 'lens-60'
        ? states60
        : lens.focusing === 'whole'
          ? { by: 'unit', closestMagnification }
          : { by: 'internal', closestMagnification, closestFocusDistance, keeps: 'f-number' },
  };
}
