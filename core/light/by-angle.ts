/** Steps of a degree; between them it is straight. */
const steps = 180;

/**
 * Something that hangs on an angle alone, as a table to look up many times by the angle's cosine.
 *
 * @param valueAt what it is at an angle, rad, 0 to π; asked for each whole degree, once
 * @returns the value by the cosine; beyond −1 or 1, as rounding may have it, the value at the end
 *
 * @example byAngle(Math.cos)(0) // 0, to rounding
 */
export function byAngle(valueAt: (angle: number) => number): (cosine: number) => number {
  const table = Float64Array.from({ length: steps + 1 }, (_, index) => valueAt((Math.PI * index) / steps));
  return (cosine) => {
    const place = (steps / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cosine)));
    const before = Math.min(steps - 1, Math.floor(place));
    return table[before]! + (place - before) * (table[before + 1]! - table[before]!);
  };
}
