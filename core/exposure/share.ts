import { OutOfRange } from '#core/quantity/errors.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** Throws {@link OutOfRange} unless *value* is above 0 and at most 1. Returns it, for use inline. */
export function requireShare(quantity: QuantityName, value: number): number {
  if (!(value > 0 && value <= 1)) throw new OutOfRange(quantity, value, 'a share above 0, at most 1');
  return value;
}
