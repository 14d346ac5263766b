import { printQuantity } from '#core/quantity/print.ts';

const printCount = (count: number) => printQuantity('frame-count', count);

/** Nobody takes more. */
const mostFrames = 10_000;

export function framesInWords(count: number | undefined): string | undefined {
  if (count === undefined) return undefined;
  if (count === 1) return '1: one is enough';
  return count > mostFrames ? `more than ${printCount(mostFrames)}` : undefined;
}

export function inTimeInWords(
  taken: number | undefined,
  known: { readonly 'frame-count'?: number },
): string | undefined {
  const all = known['frame-count'];
  if (taken === undefined || all === undefined) return undefined;
  if (taken >= all) return 'all of them';
  return `${printCount(taken)} of ${all > mostFrames ? 'them' : printCount(all)}`;
}

/** Marks of common lenses end here. */
const [widest, smallest] = [1, 32];

export function balancedInWords(fNumber: number | undefined): string | undefined {
  if (fNumber === undefined) return undefined;
  const printed = printQuantity('f-number', fNumber);
  if (fNumber > smallest) return `${printed}, past the last mark`;
  return fNumber < widest ? `${printed}, wider than lenses open` : undefined;
}

/** What heads common flashes can give. */
const weakest = 1 / 128;

/** Of a power that a flash does not have. */
export function powerInWords(power: number | undefined): string | undefined {
  if (power === undefined) return undefined;
  const printed = printQuantity('flash-power', power);
  if (power > 1) return power < 1.005 ? undefined : `${printed} times full: more than it has`;
  return power < weakest / 1.1 ? `${printed}, less than most can give` : undefined;
}

/** What common cameras can be set to. */
const highest = 25_600;

export function isoInWords(iso: number | undefined): string | undefined {
  if (iso === undefined) return undefined;
  if (iso > highest) return `more than ${printQuantity('iso', highest)}`;
  return iso < 100 ? 'below 100' : undefined;
}
