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
