import { OutOfRange } from '#core/quantity/errors.ts';

/** 1/(2 sin θ′) of a cone that opens to the whole half space: none in air is wider. */
const widestCone = 0.5;

/** Throws {@link OutOfRange} unless *value* is the effective f-number of a cone that air can hold: 0.5 or above. Returns it, for use inline. */
export function requireCone(value: number): number {
  if (!(value >= widestCone && value < Infinity)) {
    throw new OutOfRange('effective-f-number', value, 'a finite number, 0.5 or above: no cone in air is wider');
  }
  return value;
}
