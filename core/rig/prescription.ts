/**
 * A real lens, surface by surface, as patents and design programs list it; light runs from the first surface to the last.
 *
 * Lengths in mm, indices at one wavelength.
 */
export interface Prescription {
  readonly surfaces: readonly Surface[];
  /** The surface in whose vertex plane the stop stands, just before its glass, counted from 0. Often a flat one in air. */
  readonly stop: number;
  /** Settings of a lens that focuses: the first at infinity, each nearer than the one before. */
  readonly settings?: readonly FocusSetting[];
}

export interface Surface {
  /** *r*, positive where the centre lies towards the sensor, Infinity for a flat surface. */
  readonly radius: number;
  /** To the next vertex; of the last surface: to the sensor. */
  readonly thickness: number;
  /** Refractive index behind the surface; 1 in air. */
  readonly index: number;
  /** Free diameter; where left out the glass is taken to be wide enough. */
  readonly clearAperture?: number;
}

/** What changes when such a lens is focused. */
export interface FocusSetting {
  /** *m₀*, 0 at infinity. */
  readonly focusMagnification: number;
  /** Thickness behind each surface that moves, by its place in the list. */
  readonly thickness: Readonly<Record<number, number>>;
}

/** How far a surface bulges from its vertex plane at the height *y*, towards its centre; NaN beyond its radius. */
export function sag(radius: number, y: number): number {
  return radius === Infinity ? 0 : y ** 2 / (radius * (1 + Math.sqrt(1 - (y / radius) ** 2)));
}
