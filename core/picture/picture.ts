import { encodedSrgb } from '#core/light/srgb.ts';
import { rendering } from './render.ts';
import type { Scene } from './scene.ts';
import { sharp } from './sharp.ts';

/** What a sensor recorded, in linear light; upright as the subject. */
export interface Picture {
  readonly columns: number;
  readonly rows: number;
  /** 3: red, green, blue of linear sRGB; 1: luminance alone */
  readonly channels: 1 | 3;
  /** One plane a channel, row by row from the top left; 1 is a white surface fully lit. Highlights may exceed it. */
  readonly light: Float32Array;
}

/** The camera of one frame, focused on a plane of the scene and square to the axis. */
export interface View {
  /** *m*, in the sharp plane, above 0 */
  readonly magnification: number;
  /** *N_w*, of the cone that reaches the sensor, above 0 */
  readonly effectiveFNumber: number;
  /** *P*, exit over entrance pupil diameter, above 0 */
  readonly pupilMagnification: number;
  /** *u*, entrance pupil to sharp plane, mm, above 0 */
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
  /** Which noise: the same seed, the same noise; 0 if absent */
  readonly seed?: number;
  /** Three channels instead of luminance; luminance if absent */
  readonly colour?: boolean;
}

export interface RenderOptions {
  /** In how many depths the scene is blurred at most, a whole number from 1; 24 if absent */
  readonly slices?: number;
  /**
   * Places of the grid per pixel, each way, a whole number from 1 to 8; 1 if absent. With 2 and a scene sampled as finely, patterns too
   * fine for the pixels come back as the false ones that a sensor records, at four times the time.
   */
  readonly oversampling?: number;
  /**
   * Heights of the sharp planes of several frames: each place is as sharp as in the frame whose plane is nearest to it. What a stack comes to
   * when it is merged without a fault, but for what edges hide, at the cost of one frame. The view's own sharp plane alone if absent.
   */
  readonly sharpAt?: readonly number[];
}

/**
 * What the sensor records of a scene: blurred by defocus, waves, aberration and movement, near edges before what is behind, averaged over
 * each pixel, with photon noise where the view has electrons.
 *
 * @param scene what is looked at; beyond its rim it goes on as it ends (`fieldOf` says how large it should be)
 * @param view see {@link View}
 * @param options see {@link RenderOptions}. A coarse picture takes a view of fewer and larger pixels, and fewer slices.
 * @returns linear light. One blur for all channels: the optics have no colour error. Blurs wider than the picture's longer side are
 *   rendered from what lies within one such side of it.
 * @throws OutOfRange, RangeError for a view or a scene that cannot be rendered, in words: above all a sharp plane inside the lens
 *
 * Assumes incoherent light, a blur that is the same over the picture at one depth, and no light reflected between surfaces.
 * Derived in [README](README.md).
 *
 * @example renderPicture(scene, { ...view, effectiveFNumber: 16 }, { slices: 32 }).light[0]
 */
export function renderPicture(scene: Scene, view: View, options?: RenderOptions): Picture {
  const steps = rendering(scene, view, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same as {@link renderPicture} in steps: yields the share that is done after each slice, so that it can be left off between two. */
export function picturing(scene: Scene, view: View, options?: RenderOptions): Generator<number, Picture> {
  return rendering(scene, view, options);
}

/**
 * The same frame through a pupil that is a point and bends no light: everything sharp, seen in the same perspective by the same pixels.
 *
 * @returns what a stack is measured by; not a picture that any lens takes. No noise.
 * @throws as {@link renderPicture}
 */
export function sharpPicture(scene: Scene, view: View, options?: RenderOptions): Picture {
  return sharp(scene, view, options);
}

/**
 * The number from 0 to 255 that a screen is given for light from 0 to 1: sRGB, cut off beyond white, nothing else done to it.
 *
 * 255 × 12.92 L up to L = 0.0031308, 255 × (1.055 L^(1/2.4) − 0.055) above
 *
 * Source: IEC 61966-2-1:1999, section 5.2 (from memory).
 *
 * @example toneCurve(0.18) // 118
 */
export function toneCurve(light: number): number {
  const shown = Math.min(1, Math.max(0, light));
  return Math.round(255 * encodedSrgb([shown, shown, shown])[0]);
}

/** The picture's pixels for a screen, through {@link toneCurve}: red, green, blue and 255 for each. */
export function toDisplay({ columns, rows, channels, light }: Picture): Uint8ClampedArray<ArrayBuffer> {
  const size = columns * rows;
  const pixels = new Uint8ClampedArray(4 * size).fill(255);
  for (let channel = 0; channel < 3; channel++) {
    const plane = channels === 3 ? channel * size : 0;
    for (let at = 0; at < size; at++) pixels[4 * at + channel] = shades[shadeOf(light[plane + at]!)]!;
  }
  return pixels;
}

/** So finely that two neighbours among the darkest, where the curve is steepest, differ by less than one number of 255. */
const steps = 8192;
const shades = /* @__PURE__ */ Uint8ClampedArray.from({ length: steps + 1 }, (_, k) => toneCurve(k / steps));

function shadeOf(light: number): number {
  return light > 0 ? Math.min(steps, Math.round(light * steps)) : 0;
}
