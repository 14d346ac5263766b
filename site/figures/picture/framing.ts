/** Pixels of a picture: as many as a sheet shows well and a worker makes in about a second. */
export const [columns, rows] = [768, 512] as const;

/**
 * The pitch of a picture's pixels, mm on the sensor: each stands for a whole number of the sensor's own, so many that the picture takes in
 * *width* mm of the subject where the sensor is large enough for it.
 */
export function pitchFor(given: {
  readonly magnification: number;
  readonly pixelPitch: number;
  readonly sensorWidth: number;
  /** Of the subject that shall be seen, mm; all the sensor takes in if absent. */
  readonly width?: number;
}): number {
  const across = Math.min(given.sensorWidth, (given.width ?? Infinity) * given.magnification);
  return given.pixelPitch * Math.max(1, Math.round(across / (columns * given.pixelPitch)));
}
