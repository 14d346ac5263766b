import { OutOfRange, requireNotNegative } from '#core/quantity/errors.ts';

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

/**
 * The surfaces of a lens at one of its settings, or between them.
 *
 * Between known settings each moving thickness follows the one polynomial in *m₀* through all of them, as a cam does.
 *
 * @param prescription the lens
 * @param focusMagnification *m₀*, from 0 to the nearest setting
 * @returns its surfaces with the thicknesses of that setting; as listed where it has no settings
 * @throws OutOfRange for a magnification below 0, beyond the last setting or, of a lens without settings, not finite: how it would get there nobody said
 */
export function surfacesAt({ surfaces, settings = [] }: Prescription, focusMagnification: number): readonly Surface[] {
  const nearest = settings.at(-1)?.focusMagnification ?? Infinity;
  requireNotNegative('focus-magnification', focusMagnification);
  if (focusMagnification > nearest) {
    throw new OutOfRange('focus-magnification', focusMagnification, `0 to ${nearest}, the nearest setting`);
  }
  const weights = settings.map(({ focusMagnification: here }) =>
    settings.reduce(
      (weight, { focusMagnification: there }) =>
        there === here ? weight : (weight * (focusMagnification - there)) / (here - there),
      1,
    ),
  );
  return surfaces.map((surface, index) => {
    if (!settings.some(({ thickness }) => index in thickness)) return surface;
    const thickness = settings.reduce(
      (sum, setting, place) => sum + (setting.thickness[index] ?? surface.thickness) * (weights[place] as number),
      0,
    );
    return { ...surface, thickness };
  });
}
