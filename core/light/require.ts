import { OutOfRange, requireFinite, requireNotNegative } from '#core/quantity/errors.ts';
import type { Vector } from './vector.ts';

/** Throws {@link OutOfRange} unless *place* is one, mm. */
export function requirePlace(place: Vector): void {
  for (const coordinate of place) requireFinite('flash-distance', coordinate);
}

/** Throws {@link OutOfRange} unless *value* is an index of something no thinner than the air about it. */
export function requireIndex(value: number): void {
  if (!(value >= 1 && value < Infinity)) throw new OutOfRange('refractive-index', value, 'a finite number, 1 or above');
}

/** Throws {@link OutOfRange} unless *value* is an index of a film: denser than the air about it, or there is none. */
export function requireFilmIndex(value: number): void {
  if (!(value > 1 && value < Infinity)) {
    throw new OutOfRange('refractive-index', value, 'a finite number above 1: at 1 there is no film');
  }
}

/** Throws {@link OutOfRange} unless *value* is an angle from 0 to π/2: of rays that meet the surface from outside. */
export function requireIncidence(value: number): void {
  requireNotNegative('incidence-angle', value);
  if (value > Math.PI / 2) throw new OutOfRange('incidence-angle', value, 'at most a right angle');
}

/** Throws {@link OutOfRange} unless *value* is an angle from 0 to below π/2: inside a film, light never grazes. */
export function requireRefraction(value: number): void {
  requireNotNegative('refraction-angle', value);
  if (value >= Math.PI / 2) throw new OutOfRange('refraction-angle', value, 'less than a right angle');
}

/** Throws {@link OutOfRange} unless *value* is a share from 0 to below *most*; *most* itself passes where it is below 1. */
export function requireShare(quantity: 'reflectance', value: number, most: number): void {
  if (!(value >= 0 && (value < most || (value === most && most < 1)))) {
    throw new OutOfRange(quantity, value, `a share from 0 to ${most < 1 ? most : 'below 1'}`);
  }
}

/** Throws {@link OutOfRange} unless *value* can count a band: bright ones at whole numbers, dark ones halfway. */
export function requireOrder(value: number): void {
  if (!(value >= 1 && value < Infinity))
    throw new OutOfRange('interference-order', value, 'a finite number, 1 or above');
}
