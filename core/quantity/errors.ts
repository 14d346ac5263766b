import type { QuantityName } from './vocabulary.ts';

/**
 * A quantity lies outside the range in which a function has an answer.
 *
 * Carries the quantity's id, the value that was given and the range in words, so that a page can say
 * what was wrong in the reader's own terms instead of showing a number that means nothing.
 */
export class OutOfRange extends RangeError {
  override readonly name = 'OutOfRange';
  readonly quantity: QuantityName;
  readonly value: number;
  readonly accepted: string;

  constructor(quantity: QuantityName, value: number, accepted: string) {
    super(`${quantity} is ${value}; accepted: ${accepted}`);
    this.quantity = quantity;
    this.value = value;
    this.accepted = accepted;
  }
}

/** Throws {@link OutOfRange} unless *value* is a finite number above zero. Returns it, for use inline. */
export function requirePositive(quantity: QuantityName, value: number): number {
  if (!(value > 0 && value < Infinity)) throw new OutOfRange(quantity, value, 'a finite number above 0');
  return value;
}

/** Throws {@link OutOfRange} unless *value* is a finite number, zero or above. Returns it, for use inline. */
export function requireNotNegative(quantity: QuantityName, value: number): number {
  if (!(value >= 0 && value < Infinity)) throw new OutOfRange(quantity, value, 'a finite number, 0 or above');
  return value;
}

/** Throws {@link OutOfRange} unless *value* is a finite number of either sign. Returns it, for use inline. */
export function requireFinite(quantity: QuantityName, value: number): number {
  if (!Number.isFinite(value)) throw new OutOfRange(quantity, value, 'a finite number');
  return value;
}
