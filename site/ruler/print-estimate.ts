import { percent, printQuantity } from '#core/quantity/print.ts';
import { degree } from '#core/quantity/units.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Estimate } from '#core/rig/fit/lens-fit.ts';

/** Nothing on this page is known better than that: sensor and ruler are not. */
const finest = 1e-4;

/** How many figures of a number its error leaves: two of the error's own. */
const figuresOf = (value: number, error: number) =>
  Math.min(5, Math.max(1, Math.floor(Math.log10(Math.abs(value) / error)) + 2));

/** A measured number with as many digits as its error leaves, and the error as a share: `0.3902× ± 0.02 %`. */
export function printEstimate(name: QuantityName, { value, standardError }: Estimate): string {
  if (standardError === null || value === 0) return printQuantity(name, value);
  const share = Math.max(finest, Math.abs(standardError / value));
  const number = printQuantity(name, value, { figures: Math.max(3, figuresOf(1, share)), exact: true });
  return `${number} ± ${share === finest ? 'under ' : ''}${percent(share)}`;
}

/** Smaller errors than these mean nothing: rulers, rings and hands are not so exact. Base units. */
const finestOf: Partial<Record<QuantityName, number>> = {
  'focus-magnification': 1e-4,
  'front-principal-depth': 0.01,
  'subject-tilt': 0.01 * degree,
};

/** A number that may be about nothing, with the error in its own unit: `0.02° ± 0.04°`. */
export function printDifference(name: QuantityName, { value, standardError }: Estimate): string {
  const sign = value < 0 ? '−' : '';
  if (standardError === null) return `${sign}${printQuantity(name, Math.abs(value))}`;
  const finest = finestOf[name] ?? 0;
  const error = Math.max(finest, standardError);
  if (error === 0) return `${sign}${printQuantity(name, Math.abs(value))}`;
  const figures = figuresOf(value, error);
  // What is not told from nothing is written so.
  if (Math.abs(value) < error / 2) return `${printQuantity(name, 0)} ± ${printQuantity(name, error, { figures: 2 })}`;
  const under = error === finest ? 'under ' : '';
  return `${sign}${printQuantity(name, Math.abs(value), { figures })} ± ${under}${printQuantity(name, error, { figures: 2 })}`;
}

/** How far a number is above or below another, in per cent; what rounds to nothing has no sign. */
export function printOff(measured: number, fitted: number): string {
  return `${signed(100 * (measured / fitted - 1), 2, '+')}\u202f%`;
}

/** A number of standard errors: `−1.2`. */
export const printStudentised = (value: number) => signed(value, 1, '');

function signed(value: number, decimals: number, plus: string): string {
  const size = Math.abs(value).toFixed(decimals);
  if (Number(size) === 0) return size;
  return `${value < 0 ? '−' : plus}${size}`;
}
