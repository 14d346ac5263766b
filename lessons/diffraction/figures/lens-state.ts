/** What both sheets show: a perfect lens, the pixels behind it, and a pattern on them. Lengths in mm, frequencies in 1/mm. */
export interface LensState {
  readonly fNumber: number;
  readonly wavelength: number;
  readonly effectiveFNumber: number;
  readonly airyDiameter: number;
  readonly cutoffFrequency: number;
  readonly pixelPitch: number;
  readonly nyquistFrequency: number;
  readonly spatialFrequency: number;
}
