import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';

/**
 * The depth to count on where waves matter. The rule is the microscopist's: the two depths are added.
 *
 * combined depth = T + λ/NA²
 *
 * @param given.depthOfField *T*, from geometry, mm, above 0; `Infinity` beyond the hyperfocal distance
 * @param given.waveDepth from diffraction, mm, above 0
 * @returns mm, both sides together; `Infinity` where *T* is. A convention, not a law: the two have no common sharp edge.
 * @throws OutOfRange for a depth that is not above zero, or a wave depth that is not finite
 *
 * Source: total depth of field d = λ n/NA² + n e/(M NA), Inoué and Spring, Video Microscopy (from memory). See [README](README.md#waves).
 *
 * @example combinedDepth({ depthOfField: 0.1, waveDepth: 0.05 }) // 0.15
 */
export function combinedDepth({ depthOfField, waveDepth }: { depthOfField: number; waveDepth: number }): number {
  if (!(depthOfField > 0)) throw new OutOfRange('depth-of-field', depthOfField, 'above 0; Infinity is fine');
  return depthOfField + requirePositive('wave-depth', waveDepth);
}
