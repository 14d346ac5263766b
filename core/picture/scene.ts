/** One surface of a subject seen along the axis, on the grid of its scene: row by row from the top left. */
export interface Surface {
  /** Light leaving it, 1 a white surface fully lit: three planes, red, green, blue of linear sRGB; shading and highlights included */
  readonly albedo: Float32Array;
  /** mm towards the camera; 0 is the deepest place of the scene */
  readonly height: Float32Array;
  /** 0 where it is not, 1 where it is, in between at its outline */
  readonly coverage: Float32Array;
}

/** A subject as a camera at an infinite distance would see it; the perspective of a real one is the renderer's. */
export interface Scene {
  readonly columns: number;
  readonly rows: number;
  /** Between neighbouring samples on the subject, mm, the same at every height */
  readonly pitch: number;
  /** The largest height, mm */
  readonly depth: number;
  /** Front surfaces first; what overhangs hides what comes later. The last one covers everything. */
  readonly surfaces: readonly Surface[];
}

/**
 * Throws RangeError unless the arrays of a scene are as long as it says and its heights are numbers.
 *
 * @returns heights of its lowest and its highest place that is covered, mm
 */
export function requireScene({ columns, rows, pitch, surfaces }: Scene): {
  readonly low: number;
  readonly high: number;
} {
  const size = columns * rows;
  const isGrid = [columns, rows].every((count) => Number.isInteger(count) && count > 0);
  if (!(isGrid && pitch > 0 && pitch < Infinity && surfaces.length > 0))
    throw new RangeError(
      `a scene of ${columns} × ${rows} samples ${pitch} mm apart on ${surfaces.length} surfaces is none`,
    );
  let low = Infinity;
  let high = -Infinity;
  let sum = 0;
  for (const { albedo, height, coverage } of surfaces) {
    if (albedo.length !== 3 * size || height.length !== size || coverage.length !== size)
      throw new RangeError(`a surface of the scene has not ${columns} × ${rows} samples in each of its planes`);
    for (let at = 0; at < size; at++) {
      if (!(coverage[at]! > 0)) continue;
      const value = height[at]!;
      if (value < low) low = value;
      if (value > high) high = value;
      sum += value;
    }
  }
  if (!(Number.isFinite(sum) && high >= low)) throw new RangeError('the scene has heights that are not finite numbers');
  return { low, high };
}
