import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import { defocusBlurOfCone, magnificationOffPlaneOfCone } from '#core/depth/blur-of-cone.ts';
import type { Cone } from '#core/depth/cone.ts';

/** The camera of one frame, focused on a plane of the scene and square to the axis. */
export interface View {
  /** *m*, in the sharp plane, above 0 */
  readonly magnification: number;
  /** *N_w*, of the cone that reaches the sensor, above 0 */
  readonly effectiveFNumber: number;
  /** *P*, exit over entrance pupil diameter, above 0 */
  readonly pupilMagnification: number;
  /** *u*, entrance pupil to sharp plane, mm, not 0: `Infinity` for a telecentric chain, below 0 for a pupil behind the subject */
  readonly entrancePupilDistance: number;
  /** height of the sharp plane in the scene, mm towards the camera from its deepest point; may lie outside the scene */
  readonly focusHeight: number;
  /** *p* on the sensor of one pixel of the picture, mm */
  readonly pitch: number;
  readonly columns: number;
  readonly rows: number;
  /** *λ*, mm, of light of one wavelength; photopic white if absent */
  readonly wavelength?: number;
  /** *W₀₄₀*, in wavelengths (of 555 nm in white light); 0 if absent */
  readonly sphericalAberration?: number;
  /** A movement during the exposure: its length on the sensor, mm, and its direction, radians from the rows, downwards */
  readonly motionBlur?: { readonly width: number; readonly angle: number };
  /** Electrons that a white surface frees in one pixel: photon noise follows from it. No noise if absent. */
  readonly electronsAtWhite?: number;
  /** *r*, standard deviation that counting them adds, electrons; 0 if absent. Without electrons nothing is counted. */
  readonly readNoise?: number;
  /** Which noise: the same seed, the same noise; 0 if absent */
  readonly seed?: number;
  /** Three channels instead of luminance; luminance if absent */
  readonly colour?: boolean;
}

/** More pixels than that in a row or column would take a browser's memory. */
const mostPixels = 8192;

/**
 * Throws unless a view can be rendered of a scene so deep.
 *
 * @throws OutOfRange by the quantity's name: above all an entrance pupil's distance that leaves the sharp plane, or the top of the
 *   scene, inside the lens; RangeError for a number of pixels or slices that is none
 */
export function requireView(view: View, depth: number): void {
  requirePositive('magnification', view.magnification);
  requirePositive('effective-f-number', view.effectiveFNumber);
  requirePositive('pupil-magnification', view.pupilMagnification);
  requirePositive('pixel-pitch', view.pitch);
  if (view.wavelength !== undefined) requirePositive('wavelength', view.wavelength);
  const spherical = view.sphericalAberration ?? 0;
  if (!(Math.abs(spherical) <= 20))
    throw new OutOfRange('spherical-aberration', spherical, 'from −20 to 20 wavelengths');
  if (view.motionBlur) {
    if (!(view.motionBlur.width >= 0 && view.motionBlur.width < Infinity))
      throw new OutOfRange('motion-blur', view.motionBlur.width, 'a finite length, 0 or above');
    requireNumber('direction of the movement', view.motionBlur.angle);
  }
  if (view.electronsAtWhite !== undefined) requirePositive('electrons', view.electronsAtWhite);
  if (view.readNoise !== undefined) requireNotNegative('read-noise', view.readNoise);
  requireNumber('seed', view.seed ?? 0);
  requireNumber('height of the sharp plane', view.focusHeight);
  requirePixels('columns', view.columns);
  requirePixels('rows', view.rows);
  const { entrancePupilDistance } = view;
  if (!(Math.abs(entrancePupilDistance) > 0)) {
    const accepted = 'that of a sharp plane in front of the entrance pupil, or of a pupil behind the subject';
    throw new OutOfRange('entrance-pupil-distance', entrancePupilDistance, accepted);
  }
  // The pupil looks at the top first, or from behind at the deepest place.
  const toNearest = entrancePupilDistance + view.focusHeight - (entrancePupilDistance > 0 ? depth : 0);
  if (!(toNearest * Math.sign(entrancePupilDistance) > 0)) {
    const accepted = 'that of a subject that lies in front of the entrance pupil as a whole';
    throw new OutOfRange('entrance-pupil-distance', toNearest, accepted);
  }
}

function requirePixels(what: string, count: number): void {
  if (Number.isInteger(count) && count >= 1 && count <= mostPixels) return;
  throw new RangeError(`the picture has ${count} ${what}; accepted: a whole number from 1 to ${mostPixels}`);
}

function requireNumber(what: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`the ${what} is ${value}; accepted: a finite number`);
}

/** *D* = m |u|/N_w, mm: the rim ray leaves the subject at the slope m/(2 N_w) and meets the pupil in the distance u. `Infinity` where u is. */
export function entrancePupilOf({ magnification, entrancePupilDistance, effectiveFNumber }: View): number {
  return (magnification * Math.abs(entrancePupilDistance)) / effectiveFNumber;
}

/** What depth and perspective ask of a view. */
function coneOf({ magnification, effectiveFNumber, entrancePupilDistance }: View): Cone {
  return { magnification, effectiveFNumber, inverseEntrancePupilDistance: 1 / entrancePupilDistance };
}

/** Diameter on the sensor of the blur of a place at a height of the scene, mm: below zero for places nearer than the sharp plane. */
export function blurAt(view: View, height: number): number {
  const offset = view.focusHeight - height;
  return Math.sign(offset) * defocusBlurOfCone({ ...coneOf(view), offset });
}

/** Image over subject size of a place at a height of the scene. */
export function scaleAt(view: View, height: number): number {
  return magnificationOffPlaneOfCone({ ...coneOf(view), offset: view.focusHeight - height });
}

/**
 * How much of a scene a view shows: what a scene has to cover so that nothing at the picture's rim is made up.
 *
 * @returns width and height on the subject, mm, where most of it is seen, with the blur that reaches in from outside: at the deepest place,
 *   or at the nearest for a pupil behind the subject
 * @throws OutOfRange as {@link requireView}
 */
export function fieldOf(view: View, depth: number): { readonly width: number; readonly height: number } {
  requireView(view, requireFinite('subject-depth', depth));
  const blur = Math.max(Math.abs(blurAt(view, 0)), Math.abs(blurAt(view, depth)));
  const rim = blur + (view.motionBlur?.width ?? 0);
  const scale = Math.min(scaleAt(view, 0), scaleAt(view, depth));
  return { width: (view.columns * view.pitch + rim) / scale, height: (view.rows * view.pitch + rim) / scale };
}
