import { requirePositive } from '#core/quantity/errors.ts';
import { degree } from '#core/quantity/units.ts';

/**
 * What a lens leaves of light on its way, by ISO 12232's example: π/4 · transmission 0.9 · vignetting 0.98 · cos⁴ 10° = 0.6516.
 *
 * Source: ISO 12232:2006, as a library's documentation quotes it; see the outside check on exposure by library. See [README](README.md#sensor).
 */
export const lensFactor = (Math.PI / 4) * 0.9 * 0.98 * Math.cos(10 * degree) ** 4;

/** A surface as a camera exposes it. */
export interface ExposedSurface {
  /** *L_v*, cd/m², above 0 */
  readonly luminance: number;
  /** *N_w*, above 0 */
  readonly effectiveFNumber: number;
  /** *t*, s, above 0 */
  readonly exposureTime: number;
}

/**
 * The light that falls on the sensor while the shutter is open.
 *
 * H = q L_v t / N_w², with q = {@link lensFactor}
 *
 * @param surface see {@link ExposedSurface}
 * @returns *H*, lx s. With N_w in it nothing is to be taken off for extension.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes no flare. Source: ISO 12232:2006, as above. See [README](README.md#sensor).
 *
 * @example luminousExposure({ luminance: 4000, effectiveFNumber: 8, exposureTime: 0.004 }) // 0.16289...
 */
export function luminousExposure({ luminance, effectiveFNumber, exposureTime }: ExposedSurface): number {
  requirePositive('luminance', luminance);
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('exposure-time', exposureTime);
  return (lensFactor * luminance * exposureTime) / effectiveFNumber ** 2;
}
