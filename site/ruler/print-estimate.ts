import { percent, printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Estimate } from '#core/rig/fit/lens-fit.ts';

/** A measured number with as many digits as its error leaves, and the error as a share: `0.3902× ± 0.02 %`. */
export function printEstimate(name: QuantityName, { value, standardError }: Estimate): string {
  const share = standardError === null || value === 0 ? NaN : Math.abs(standardError / value);
  if (!Number.isFinite(share)) return printQuantity(name, value);
  const figures = Math.min(6, Math.max(2, Math.ceil(-Math.log10(Math.max(share, 1e-9))) + 1));
  return `${printQuantity(name, value, { figures, exact: true })} ± ${share < 1e-5 ? '0.001\u202f%' : percent(share)}`;
}

/** An angle and a length that may be about nothing, with the error in their own unit: `0.02° ± 0.04°`. */
export function printDifference(name: QuantityName, { value, standardError }: Estimate): string {
  const sign = value < 0 ? '−' : '';
  const figures = Math.min(5, Math.max(1, Math.ceil(Math.log10(Math.abs(value) / (standardError ?? Infinity))) + 2)) || 2;
  const number = `${sign}${printQuantity(name, Math.abs(value), { figures })}`;
  return standardError === null ? number : `${number} ± ${printQuantity(name, standardError, { figures: 2 })}`;
}
