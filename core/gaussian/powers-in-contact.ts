import { OutOfRange, requireFinite } from '#core/quantity/errors.ts';

/**
 * The power of thin lenses stacked in contact.
 *
 * Φ = Φ_1 + Φ_2 + ...
 *
 * @param powers of the single lenses, dpt, of either sign
 * @returns dpt; 0 for none. It is powers that add, never focal lengths.
 * @throws OutOfRange for a power that is not finite
 *
 * Assumes lenses much thinner than their focal lengths, with no gap between them.
 * Source: OpenStax, University Physics Vol. 3, Example 2.6. Derived in [README](README.md#powers).
 *
 * @example powerInContact([2, 4]) // 6
 */
export function powerInContact(powers: readonly number[]): number {
  return powers.reduce((sum, power) => sum + requireFinite('close-up-power', power), 0);
}

/**
 * The focal length of thin lenses stacked in contact.
 *
 * 1/f = 1/f_1 + 1/f_2 + ...
 *
 * @param focalLengths of the single lenses, mm, negative for a diverging lens, not 0
 * @returns mm, negative where the stack diverges
 * @throws OutOfRange for a focal length of 0 or not finite, and where the powers cancel or there is no lens: a flat glass has none
 *
 * Assumes lenses much thinner than their focal lengths, with no gap between them.
 * Source: OpenStax, University Physics Vol. 3, Example 2.6. Derived in [README](README.md#powers).
 *
 * @example focalLengthInContact([100, 100]) // 50
 */
export function focalLengthInContact(focalLengths: readonly number[]): number {
  const power = focalLengths.reduce((sum, focalLength) => {
    if (focalLength === 0) throw new OutOfRange('focal-length', focalLength, 'a finite number other than 0');
    return sum + 1 / requireFinite('focal-length', focalLength);
  }, 0);
  if (power === 0) throw new OutOfRange('focal-length', Infinity, 'lenses whose powers do not cancel');
  return 1 / power;
}
